// SPDX-License-Identifier: Apache-2.0
#include "clearance/wording.h"

#include <algorithm>

#include "clearance/finding.h"
#include "units/length_text.h"

namespace baywright {
namespace {

bool isLower(char c) {
  return c >= 'a' && c <= 'z';
}
bool isUpper(char c) {
  return c >= 'A' && c <= 'Z';
}

}  // namespace

std::string inSentence(std::string_view name) {
  const bool commonNoun =
      name.size() > 1 && isUpper(name.front()) &&
      std::all_of(name.begin() + 1, name.end(), [](char c) { return isLower(c) || c == ' '; });
  std::string text(name);
  if (!commonNoun) return text;
  text.front() = static_cast<char>(text.front() - 'A' + 'a');
  return "the " + text;
}

std::string startingSentence(std::string_view inSentence) {
  std::string text(inSentence);
  if (!text.empty() && isLower(text.front())) text.front() = static_cast<char>(text.front() - 'a' + 'A');
  return text;
}

std::string missingText(Uncertain margin, const UnitSystem& units) {
  const double step = displayStep(units);
  if (-margin.value < step / 2) return "under " + formatLength(step, units);
  return formatLength(-margin.value, units);
}

std::string marginText(Uncertain margin, const std::string& where, const UnitSystem& units) {
  const std::string toSpare = formatLength(margin.value, units) + " to spare " + where;
  switch (verdictOf(margin)) {
    case Verdict::Blocked:
      return missingText(margin, units) + " short " + where + ".";
    case Verdict::Tight:
      return toSpare + ", but only known to ± " + formatLength(margin.halfWidth95(), units) + ".";
    case Verdict::Clear:
      return toSpare + ".";
    case Verdict::Unknown:
      break;
  }
  return "how much there is to spare " + where + " is not known.";
}

}  // namespace baywright
