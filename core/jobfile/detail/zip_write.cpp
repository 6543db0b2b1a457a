// SPDX-License-Identifier: Apache-2.0
#include "jobfile/detail/zip_write.h"

#include <zip.h>

#include <memory>

namespace baywright::detail {
namespace {

constexpr zip_uint16_t kMidnight = 0;
constexpr zip_uint16_t kFirstOf1980 = (1 << 5) | 1;  // MS-DOS date: year since 1980, month, day

struct FreeSource {
  void operator()(zip_source_t* source) const { zip_source_free(source); }
};
using Source = std::unique_ptr<zip_source_t, FreeSource>;

tl::unexpected<Problem> failed(const std::string& why) {
  return fail("The job could not be packed: " + why + ".");
}

bool addMember(zip_t* zip, const NewMember& member) {
  zip_source_t* bytes = zip_source_buffer(zip, member.bytes.data(), member.bytes.size(), 0);
  if (!bytes) return false;
  const zip_int64_t index = zip_file_add(zip, member.name.c_str(), bytes, ZIP_FL_ENC_UTF_8);
  if (index < 0) {
    zip_source_free(bytes);
    return false;
  }
  const auto place = static_cast<zip_uint64_t>(index);
  const zip_int32_t method = member.packing == Packing::Stored ? ZIP_CM_STORE : ZIP_CM_DEFLATE;
  return zip_set_file_compression(zip, place, method, 0) == 0 &&
         zip_file_set_dostime(zip, place, kMidnight, kFirstOf1980, 0) == 0;
}

/// What libzip wrote into the source.
Result<std::string> contentOf(zip_source_t* source) {
  zip_stat_t facts;
  if (zip_source_stat(source, &facts) != 0 || zip_source_open(source) != 0) return failed("no memory");
  std::string bytes(facts.size, '\0');
  const zip_int64_t got = zip_source_read(source, bytes.data(), bytes.size());
  zip_source_close(source);
  if (got != static_cast<zip_int64_t>(bytes.size())) return failed("the archive came out short");
  return bytes;
}

}  // namespace

Result<std::string> writeZip(const std::vector<NewMember>& members) {
  zip_error_t error;
  zip_error_init(&error);
  const Source target(zip_source_buffer_create(nullptr, 0, 0, &error));
  if (!target) return failed("no memory");
  zip_source_keep(target.get());  // one for us, one for the archive
  zip_t* zip = zip_open_from_source(target.get(), ZIP_CREATE | ZIP_TRUNCATE, &error);
  if (!zip) {
    zip_source_free(target.get());
    return failed("the archive cannot be started");
  }
  for (const NewMember& member : members) {
    if (addMember(zip, member)) continue;
    zip_discard(zip);
    return failed("the member " + member.name + " cannot be added");
  }
  if (zip_close(zip) != 0) {
    const std::string why = zip_strerror(zip);
    zip_discard(zip);
    return failed(why);
  }
  return contentOf(target.get());
}

}  // namespace baywright::detail
