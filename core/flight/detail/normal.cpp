// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/normal.h"

#include <boost/math/special_functions/erf.hpp>

namespace baywright::detail {

double normalQuantile(double p) {
  return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * p);
}

}  // namespace baywright::detail
