// SPDX-License-Identifier: Apache-2.0
#include "paper/pdf_catalogue.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(PdfCatalogue, LeavesAloneWhatIsNoPdf) {
  EXPECT_EQ(withoutPrintScaling("hello"), QByteArray("hello"));
  EXPECT_EQ(withoutPrintScaling({}), QByteArray());
}

}  // namespace
}  // namespace baywright
