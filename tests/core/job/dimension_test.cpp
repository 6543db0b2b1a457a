// SPDX-License-Identifier: Apache-2.0
#include "job/dimension.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

// Directive 2014/32/EU, annex X, chapter I: maximum permissible error a + b L mm with L rounded up to whole
// metres; class II has a = 0.3, b = 0.2. For 4.2 m: 0.3 + 0.2 x 5 = 1.3 mm.
TEST(InstrumentSigma, TakesTheTapeClassFromTheDirective) {
  const double permissible = 0.0013;
  const double reading = 0.002;
  const double expected = std::sqrt(permissible * permissible / 3 + reading * reading);
  EXPECT_NEAR(instrumentSigma(Instrument::Tape, 4.2), expected, 1e-12);
}

TEST(InstrumentSigma, IsNeverNegativeNorShrinksWithLength) {
  for (const Instrument how :
       {Instrument::Tape, Instrument::Laser, Instrument::Drawing, Instrument::Scan, Instrument::Guess}) {
    double last = 0;
    for (double length = 0; length < 30; length += 0.7) {
      EXPECT_GE(instrumentSigma(how, length), last);
      last = instrumentSigma(how, length);
    }
  }
}

TEST(InstrumentSigma, RanksTheInstruments) {
  const double length = 5;
  EXPECT_LT(instrumentSigma(Instrument::Laser, length), instrumentSigma(Instrument::Tape, length));
  EXPECT_LT(instrumentSigma(Instrument::Tape, length), instrumentSigma(Instrument::Scan, length));
  EXPECT_LT(instrumentSigma(Instrument::Scan, length), instrumentSigma(Instrument::Drawing, length));
  EXPECT_LT(instrumentSigma(Instrument::Drawing, length), instrumentSigma(Instrument::Guess, length));
}

TEST(Dimension, KnowsHowSureItIs) {
  EXPECT_EQ(shot(3).uncertain().value, 3);
  EXPECT_EQ(shot(3).uncertain().sigma, instrumentSigma(Instrument::Laser, 3));
  EXPECT_FALSE(notMeasured(3).known);
}

}  // namespace
}  // namespace baywright
