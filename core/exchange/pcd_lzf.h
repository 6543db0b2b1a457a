// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace baywright {

/// Unpacks a block of LZF (M. Lehmann's LibLZF format, which PCD uses): a control byte below 32 announces one
/// more literal byte than its value; else its upper three bits are a length less two (seven: a further byte
/// is added), its lower five bits and the next byte a distance back less one. Nothing when the block is
/// damaged or does not give exactly `size` bytes. Allocates `size` bytes only.
std::optional<std::string> unpackLzf(std::string_view block, std::size_t size);

/// A block of n bytes never gives more: three bytes stand for at most 264.
inline constexpr std::size_t kMostLzfGrowth = 88;

}  // namespace baywright
