// SPDX-License-Identifier: Apache-2.0
#include "jobfile/detail/zip_read.h"

#include <zip.h>

#include <algorithm>
#include <memory>
#include <set>
#include <vector>

namespace baywright::detail {
namespace {

constexpr std::uint64_t kRatioMattersFrom = 1 << 20;
constexpr const char* kNameTwice = "The file has two members of one name.";

struct CloseZip {
  void operator()(zip_t* archive) const { zip_discard(archive); }
};
struct CloseMember {
  void operator()(zip_file_t* member) const { zip_fclose(member); }
};
using Zip = std::unique_ptr<zip_t, CloseZip>;
using ZipMember = std::unique_ptr<zip_file_t, CloseMember>;

tl::unexpected<Problem> damaged(const std::string& how, const std::string& where = {}) {
  return fail("The file is damaged: " + how + ".", where, "Take a copy of it that is whole.");
}

std::string megabytes(std::uint64_t bytes) {
  return std::to_string((bytes + (1 << 20) - 1) >> 20) + " MB";
}

Result<Zip> open(std::string_view archive) {
  if (archive.empty()) return fail("The file is empty.");
  if (!archive.starts_with("PK")) return fail("The file is no job: it is not a zip archive.");
  zip_error_t error;
  zip_error_init(&error);
  zip_source_t* source = zip_source_buffer_create(archive.data(), archive.size(), 0, &error);
  Zip zip(source ? zip_open_from_source(source, ZIP_RDONLY | ZIP_CHECKCONS, &error) : nullptr);
  const int reason = zip_error_code_zip(&error);
  if (!zip && source) zip_source_free(source);
  zip_error_fini(&error);
  if (zip) return zip;
  if (reason == ZIP_ER_EXISTS) return fail(kNameTwice);
  return damaged(reason == ZIP_ER_NOZIP ? "it is cut short or is no zip archive"
                                        : "the parts of the archive do not fit each other");
}

struct MemberFacts {
  zip_uint64_t index = 0;
  std::string name;
  std::uint64_t size = 0;
  std::uint64_t packed = 0;
};

Result<MemberFacts> factsOf(zip_t* zip, zip_uint64_t index) {
  zip_stat_t facts;
  if (zip_stat_index(zip, index, ZIP_FL_ENC_RAW, &facts) != 0) return damaged("a member cannot be found");
  constexpr zip_uint64_t needed =
      ZIP_STAT_NAME | ZIP_STAT_SIZE | ZIP_STAT_COMP_SIZE | ZIP_STAT_COMP_METHOD | ZIP_STAT_ENCRYPTION_METHOD;
  if ((facts.valid & needed) != needed) return damaged("a member does not say what it is");
  const std::string name = facts.name;
  if (facts.encryption_method != ZIP_EM_NONE)
    return fail("The member is encrypted.", name, "Save the job without a password.");
  if (facts.comp_method != ZIP_CM_STORE && facts.comp_method != ZIP_CM_DEFLATE)
    return fail("The member is packed in a way that jobs are not.", name);
  return MemberFacts{index, name, facts.size, facts.comp_size};
}

Result<void> checkSize(const MemberFacts& member, const ArchiveLimits& limits) {
  if (member.size > limits.memberBytes)
    return fail("The member has " + megabytes(member.size) + ", but at most " +
                    megabytes(limits.memberBytes) + " are read.",
                member.name);
  if (member.size > kRatioMattersFrom &&
      static_cast<double>(member.size) > limits.ratio * static_cast<double>(member.packed))
    return fail("The member would grow to " + megabytes(member.size) +
                    " when unpacked, which no job does: the file may be meant to do harm.",
                member.name);
  return {};
}

std::string lowered(std::string name) {
  std::transform(name.begin(), name.end(), name.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return name;
}

/// All members, each decent and all together within the limits.
Result<std::vector<MemberFacts>> inspected(zip_t* zip, const ArchiveLimits& limits) {
  const auto count = static_cast<std::uint64_t>(std::max<zip_int64_t>(zip_get_num_entries(zip, 0), 0));
  if (count > limits.members)
    return fail("The file has " + std::to_string(count) + " members, but at most " +
                std::to_string(limits.members) + " are read.");
  std::vector<MemberFacts> members;
  std::set<std::string> names;
  std::uint64_t total = 0;
  for (zip_uint64_t index = 0; index < count; ++index) {
    const auto facts = factsOf(zip, index);
    if (!facts) return tl::unexpected(facts.error());
    const auto fine = checkMemberName(facts->name).and_then([&] { return checkSize(*facts, limits); });
    if (!fine) return tl::unexpected(fine.error());
    if (!names.insert(lowered(facts->name)).second) return fail(kNameTwice, facts->name);
    total += facts->size;
    if (total > limits.totalBytes)
      return fail("The file would unpack to more than " + megabytes(limits.totalBytes) + ".");
    members.push_back(*facts);
  }
  return members;
}

/// What the archive says of a size is checked before; here the bytes themselves must keep to it.
Result<std::string> readMember(zip_t* zip, const MemberFacts& facts) {
  const ZipMember member(zip_fopen_index(zip, facts.index, 0));
  if (!member) return damaged("the member cannot be opened", facts.name);
  std::string bytes(facts.size, '\0');
  std::uint64_t done = 0;
  while (done < facts.size) {
    const zip_int64_t got = zip_fread(member.get(), bytes.data() + done, facts.size - done);
    if (got < 0) return damaged("the member's checksum or packing is wrong", facts.name);
    if (got == 0) return damaged("the member is shorter than it says", facts.name);
    done += static_cast<std::uint64_t>(got);
  }
  char more = 0;
  const zip_int64_t rest = zip_fread(member.get(), &more, 1);  // also makes the checksum count
  if (rest > 0) return damaged("the member is longer than it says", facts.name);
  if (rest < 0) return damaged("the member's checksum is wrong", facts.name);
  return bytes;
}

}  // namespace

Result<void> checkMemberName(const std::string& name) {
  const auto bad = [&](const char* why) -> Result<void> {
    return fail(std::string("The file has a member whose name ") + why + ": it may be meant to do harm.",
                name);
  };
  constexpr std::size_t kLongest = 512;
  if (name.empty()) return bad("is empty");
  if (name.size() > kLongest) return bad("is too long");
  if (std::any_of(name.begin(), name.end(),
                  [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; }))
    return bad("cannot be printed");
  if (name.find('\\') != std::string::npos) return bad("has a backslash");
  if (name.front() == '/') return bad("is absolute");
  if (name.size() > 1 && name[1] == ':') return bad("names a drive");
  std::size_t start = 0;
  while (start <= name.size()) {
    const std::size_t end = std::min(name.find('/', start), name.size());
    const std::string_view part = std::string_view(name).substr(start, end - start);
    if (part == ".." || part == ".") return bad("leads out of the archive");
    if (part.empty() && end != name.size()) return bad("has an empty folder");
    start = end + 1;
  }
  return {};
}

Result<Members> readZip(std::string_view archive, const ArchiveLimits& limits,
                        const std::function<bool(const std::string& name)>& wanted) {
  const auto zip = open(archive);
  if (!zip) return tl::unexpected(zip.error());
  const auto all = inspected(zip->get(), limits);
  if (!all) return tl::unexpected(all.error());
  Members members;
  for (const MemberFacts& facts : *all) {
    if (!wanted(facts.name)) continue;
    auto bytes = readMember(zip->get(), facts);
    if (!bytes) return tl::unexpected(bytes.error());
    members.emplace(facts.name, std::move(*bytes));
  }
  return members;
}

}  // namespace baywright::detail
