// SPDX-License-Identifier: Apache-2.0
#include "survey/csv_rows.h"

#include <algorithm>

#include "survey/csv_rows_text.h"
#include "units/utf8.h"

namespace baywright {
namespace {

std::string at(int line) {
  return "line " + std::to_string(line);
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

Result<void> checkText(std::string_view line, int number) {
  while (!line.empty()) {
    const auto point = detail::firstCodePoint(line);
    const bool isControl = !point || (point->code < 0x20 && point->code != '\t');
    if (isControl)
      return fail("The line holds a control character, so this is no text file.", at(number),
                  "Choose a measuring list saved as CSV.");
    line.remove_prefix(point->bytes);
  }
  return {};
}

/// The separator that the header has most of; a comma where it has none.
char separatorOf(std::string_view header) {
  char best = ',';
  std::ptrdiff_t most = 0;
  for (const char candidate : {',', ';', '\t'}) {
    const auto count = std::count(header.begin(), header.end(), candidate);
    if (count > most) best = candidate;
    most = std::max<std::ptrdiff_t>(most, count);
  }
  return best;
}

class LineReader {
 public:
  LineReader(std::string_view line, int number, char separator)
      : rest_(line), number_(number), separator_(separator) {}

  Result<CsvRow> row() {
    CsvRow row{number_, {}, separator_};
    for (;;) {
      auto field = next();
      if (!field) return tl::unexpected(field.error());
      row.fields.push_back(std::move(*field));
      if (rest_.empty()) return row;
      rest_.remove_prefix(1);  // the separator
    }
  }

 private:
  Result<std::string> next() {
    const auto start = rest_.find_first_not_of(' ');
    if (start != std::string_view::npos && rest_[start] == '"') {
      rest_.remove_prefix(start + 1);
      return quoted();
    }
    const auto end = std::min(rest_.find(separator_), rest_.size());
    const std::string field(trimmed(rest_.substr(0, end)));
    rest_.remove_prefix(end);
    return field;
  }

  Result<std::string> quoted() {
    std::string field;
    for (;;) {
      const auto quote = rest_.find('"');
      if (quote == std::string_view::npos)
        return fail("A quote is opened and not closed.", at(number_),
                    "Close it, and write a quote inside quotes twice.");
      field += rest_.substr(0, quote);
      rest_.remove_prefix(quote + 1);
      if (rest_.empty() || rest_.front() != '"') break;
      field += '"';
      rest_.remove_prefix(1);
    }
    const auto end = std::min(rest_.find(separator_), rest_.size());
    if (!trimmed(rest_.substr(0, end)).empty())
      return fail("Text follows a closed quote.", at(number_), "Write a quote inside quotes twice.");
    rest_.remove_prefix(end);
    return field;
  }

  std::string_view rest_;
  int number_;
  char separator_;
};

}  // namespace

Result<std::vector<CsvRow>> csvRows(std::string_view bytes) {
  if (bytes.size() > kLargestTable)
    return fail("The list is larger than a megabyte.", {}, "A measuring list has a line for each reading.");
  const std::string decoded = detail::tableText(bytes);
  std::string_view text = decoded;
  std::vector<CsvRow> rows;
  char separator = ',';
  for (int number = 1; !text.empty(); ++number) {
    const auto end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    if (const auto ok = checkText(line, number); !ok) return tl::unexpected(ok.error());
    const std::string_view content = trimmed(line);
    if (content.empty() || content.front() == '#') continue;
    if (rows.size() == kMostRows)
      return fail("The list has more than " + std::to_string(kMostRows) + " rows.", at(number),
                  "Take out what is not read in this room.");
    if (rows.empty()) {
      // What some spreadsheets write before the header.
      if (content.size() == 5 && content.starts_with("sep=")) continue;
      separator = separatorOf(content);
    }
    auto row = LineReader(line, number, separator).row();
    if (!row) return tl::unexpected(row.error());
    if (std::ranges::all_of(row->fields, [](const std::string& field) { return field.empty(); })) continue;
    rows.push_back(std::move(*row));
  }
  return rows;
}

std::string csvLine(const std::vector<std::string>& fields) {
  std::string line;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) line += ',';
    const std::string& field = fields[i];
    const bool isPlain = field.find_first_of(",;\"\t") == std::string::npos && trimmed(field) == field &&
                         !(i == 0 && field.starts_with('#'));
    if (isPlain) {
      line += field;
      continue;
    }
    line += '"';
    for (const char c : field) line += c == '"' ? std::string("\"\"") : std::string(1, c);
    line += '"';
  }
  return line + "\n";
}

}  // namespace baywright
