// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "clearance/checks.h"
#include "optics/photometry.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

/// Standard uncertainty of a projector's light as a share of what is stated: ISO/IEC 21118 lets one deliver
/// 80 % of it (value from memory), and lamps fade.
constexpr double kLumensShare = 0.10;
/// Standard uncertainty of the uniformity: the projector's own fall-off toward the corners is not in its data
/// sheet (invented).
constexpr double kUniformitySigma = 0.03;

Finding blank(const CheckInput& input, const char* aspect) {
  Finding finding;
  finding.check = "picture_brightness";
  finding.key = std::string("picture_brightness/") + aspect;
  finding.subjects = {input.option.kit.projector.id, input.option.kit.screen.id};
  finding.subject = "Picture";
  finding.unit = MarginUnit::Ratio;
  return finding;
}

void addUniformity(CheckResult& result, const CheckInput& input, const Brightness& brightness) {
  Finding finding = blank(input, "uniformity");
  finding.unit = MarginUnit::Share;
  finding.margin = Uncertain{brightness.uniformity - input.job.requirements.uniformity, kUniformitySigma};
  finding.verdict = verdictOf(*finding.margin);
  const auto share = [&](double value) {
    return formatQuantity(value, QuantityKind::Ratio, input.job.units);
  };
  const auto& points = brightness.ninePoints;
  const auto dark = std::count(points.begin(), points.end(), 0.0);
  if (dark > 0) {
    finding.sentence = "The picture does not reach " + std::to_string(dark) +
                       " of the nine points of the screen at which light is measured.";
  } else {
    finding.sentence = "The darkest of nine points of the picture has " + share(brightness.uniformity) +
                       " of the light of the brightest; " + share(input.job.requirements.uniformity) +
                       " are wanted.";
    if (finding.verdict != Verdict::Clear)
      finding.sentence += " Hanging the projector squarer to the screen makes it more even.";
  }
  finding.source = "nine points as in ISO/IEC 21118; limit as agreed in the job's requirements";
  result.findings.push_back(std::move(finding));
}

void addContrast(CheckResult& result, const CheckInput& input, const Brightness& brightness) {
  const Requirements& required = input.job.requirements;
  const double native = input.option.kit.projector.contrast;
  const auto with = [&](double factor) {
    return contrastWith(factor * brightness.meanIlluminance, native, required.ambient);
  };
  Finding finding = blank(input, "contrast");
  const double sigma = std::abs(with(1 + kLumensShare) - with(1 - kLumensShare)) / 2;
  finding.margin = Uncertain{brightness.contrast - required.contrast, sigma};
  finding.verdict = verdictOf(*finding.margin);
  const auto lux = [&](double value) {
    return formatQuantity(value, QuantityKind::Illuminance, input.job.units);
  };
  finding.sentence = "With " + lux(required.ambient) + " of room light the contrast is " +
                     formatNumber(brightness.contrast, 1, input.job.units) + " to 1; " +
                     formatNumber(required.contrast, 1, input.job.units) + " to 1 is wanted";
  if (finding.verdict != Verdict::Clear && brightness.meanIlluminance > 0 && required.contrast < native) {
    const double enough = ambientAt(brightness.meanIlluminance, native, required.contrast);
    finding.sentence += ", which takes a room of " + lux(enough) + " at most";
  }
  finding.sentence += ".";
  finding.source = "15 to 1 for basic decisions: ANSI/InfoComm 3M-2011";
  result.findings.push_back(std::move(finding));
}

}  // namespace

CheckResult checkPictureBrightness(const CheckInput& input) {
  CheckResult result;
  if (!input.picture.zone || input.picture.zone->picture.lit.empty()) return result;
  const Brightness& brightness = input.picture.zone->brightness;
  addUniformity(result, input, brightness);
  addContrast(result, input, brightness);
  result.figures.push_back({"picture.mean_illuminance", brightness.meanIlluminance, "lx"});
  result.figures.push_back({"picture.mean_luminance", brightness.meanLuminance, "cd/m2"});
  result.figures.push_back({"picture.uniformity", brightness.uniformity, "1"});
  result.figures.push_back({"picture.contrast", brightness.contrast, "1"});
  result.figures.push_back({"picture.contrast_lowest", brightness.contrastLowest, "1"});
  const double native = input.option.kit.projector.contrast;
  const double wanted = input.job.requirements.contrast;
  if (wanted > 1 && wanted <= native) {
    result.figures.push_back(
        {"picture.ambient_allowed", ambientAt(brightness.meanIlluminance, native, wanted), "lx"});
  }
  result.figures.push_back({"picture.lumens_on_screen", brightness.lumensOnScreen, "lm"});
  for (std::size_t i = 0; i < brightness.ninePoints.size(); ++i) {
    result.figures.push_back(
        {"picture.nine_points." + std::to_string(i + 1), brightness.ninePoints[i], "lx"});
  }
  return result;
}

}  // namespace baywright
