// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "jobfile/job_archive.h"

/// A zip archive from somebody we do not know. Internal to `jobfile`.
namespace baywright::detail {

/// Nothing, or what is wrong with a member's name: it would leave the archive (absolute, drive, "..",
/// backslash), or is empty or unprintable.
Result<void> checkMemberName(const std::string& name);

/// The members that `wanted` says yes to, by name, read whole. Every member, wanted or not, must have a
/// decent name and keep within the limits by what the archive says of it; the wanted ones also by what comes
/// out.
using Members = std::map<std::string, std::string>;
Result<Members> readZip(std::string_view archive, const ArchiveLimits& limits,
                        const std::function<bool(const std::string& name)>& wanted);

}  // namespace baywright::detail
