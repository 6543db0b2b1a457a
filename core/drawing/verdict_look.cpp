// SPDX-License-Identifier: Apache-2.0
#include "drawing/verdict_look.h"

#include "units/angle_text.h"
#include "units/length_text.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

std::string inUnit(double value, MarginUnit unit, const UnitSystem& units) {
  switch (unit) {
    case MarginUnit::Length:
      return formatLength(value, units);
    case MarginUnit::Share:
      return formatQuantity(value, QuantityKind::Ratio, units);
    case MarginUnit::Angle:
      return formatAngle(value, units);
    case MarginUnit::Speed:
      return formatQuantity(value, QuantityKind::Speed, units);
    case MarginUnit::Ratio:
      return formatNumber(value, 2, units);
  }
  return {};
}

}  // namespace

std::string_view wordOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::Clear:
      return "clear";
    case Verdict::Unknown:
      return "unknown";
    case Verdict::Tight:
      return "tight";
    case Verdict::Blocked:
      return "blocked";
  }
  return "";
}

SymbolKind symbolOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::Clear:
      return SymbolKind::Tick;
    case Verdict::Unknown:
      return SymbolKind::Question;
    case Verdict::Tight:
      return SymbolKind::Tilde;
    case Verdict::Blocked:
      return SymbolKind::Bar;
  }
  return SymbolKind::Question;
}

std::string_view hatchNameOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::Clear:
      return "no hatch";
    case Verdict::Unknown:
      return "crossed lines";
    case Verdict::Tight:
      return "dots";
    case Verdict::Blocked:
      return "diagonal lines";
  }
  return "";
}

std::string marginText(const Finding& finding, const UnitSystem& units) {
  if (!finding.margin) return std::string(kNoFigure);
  if (finding.unit == MarginUnit::Length) return formatUncertain(*finding.margin, units);
  const std::string value = inUnit(finding.margin->value, finding.unit, units);
  if (!(finding.margin->sigma > 0)) return value;
  return value + " ± " + inUnit(finding.margin->halfWidth95(), finding.unit, units);
}

}  // namespace baywright
