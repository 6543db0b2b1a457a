// SPDX-License-Identifier: Apache-2.0
#include "drawing/verdict_look.h"

#include <gtest/gtest.h>

#include <set>

namespace baywright {
namespace {

TEST(VerdictLook, DiffersByWordSymbolAndHatch) {
  std::set<std::string_view> words, hatches;
  std::set<SymbolKind> symbols;
  for (const Verdict verdict : {Verdict::Clear, Verdict::Unknown, Verdict::Tight, Verdict::Blocked}) {
    words.insert(wordOf(verdict));
    symbols.insert(symbolOf(verdict));
    hatches.insert(hatchNameOf(verdict));
  }
  EXPECT_EQ(words.size(), 4u);
  EXPECT_EQ(symbols.size(), 4u);
  EXPECT_EQ(hatches.size(), 4u);
}

TEST(VerdictLook, WritesMarginsInTheirUnit) {
  const UnitSystem mm{LengthUnit::Millimetres};
  Finding finding;
  EXPECT_EQ(marginText(finding, mm), "—");
  finding.margin = Uncertain{-0.064, 0.005 / 1.96};
  EXPECT_EQ(marginText(finding, mm), "−64 mm ± 5 mm");
  finding.unit = MarginUnit::Share;
  finding.margin = Uncertain{0.12, 0};
  EXPECT_EQ(marginText(finding, mm), "12.0 %");
  finding.unit = MarginUnit::Angle;
  finding.margin = Uncertain{kPi / 18, 0};
  EXPECT_EQ(marginText(finding, mm), "10.0°");
  finding.unit = MarginUnit::Speed;
  finding.margin = Uncertain{2, 0};
  EXPECT_EQ(marginText(finding, mm), "2.0 m/s");
  finding.unit = MarginUnit::Ratio;
  finding.margin = Uncertain{1.5, 0};
  EXPECT_EQ(marginText(finding, mm), "1.50");
}

TEST(VerdictLook, TellsUncertaintyOfOtherUnitsToo) {
  Finding finding;
  finding.unit = MarginUnit::Share;
  finding.margin = Uncertain{0.12, 0.01 / 1.959963984540054};
  EXPECT_EQ(marginText(finding, {}), "12.0 % ± 1.0 %");
}

}  // namespace
}  // namespace baywright
