// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include "clearance/assessment.h"

namespace baywright::testing {

/// Equal to the last bit.
inline void expectSame(const Finding& a, const Finding& b) {
  EXPECT_EQ(a.key, b.key);
  EXPECT_EQ(a.check, b.check);
  EXPECT_EQ(a.subjects, b.subjects);
  EXPECT_EQ(a.verdict, b.verdict) << a.key;
  EXPECT_EQ(a.margin, b.margin) << a.key;
  EXPECT_EQ(a.unit, b.unit) << a.key;
  EXPECT_EQ(a.points, b.points) << a.key;
  EXPECT_EQ(a.moment, b.moment) << a.key;
  EXPECT_EQ(a.sentence, b.sentence);
  EXPECT_EQ(a.source, b.source);
}

inline void expectSame(const Assessment& a, const Assessment& b) {
  ASSERT_EQ(a.findings.size(), b.findings.size());
  for (std::size_t i = 0; i < a.findings.size(); ++i) expectSame(a.findings[i], b.findings[i]);
  ASSERT_EQ(a.quantities.size(), b.quantities.size());
  for (std::size_t i = 0; i < a.quantities.size(); ++i) {
    EXPECT_EQ(a.quantities[i].name, b.quantities[i].name);
    EXPECT_EQ(a.quantities[i].value, b.quantities[i].value) << a.quantities[i].name;
  }
  ASSERT_EQ(a.swings.size(), b.swings.size());
  for (std::size_t i = 0; i < a.swings.size(); ++i) {
    EXPECT_EQ(a.swings[i].verdict, b.swings[i].verdict);
    EXPECT_EQ(a.swings[i].worstMoment, b.swings[i].worstMoment);
    EXPECT_EQ(a.swings[i].strikePoint, b.swings[i].strikePoint);
  }
  ASSERT_EQ(a.ways.size(), b.ways.size());
  for (std::size_t i = 0; i < a.ways.size(); ++i) {
    EXPECT_EQ(a.ways[i].path, b.ways[i].path);
    EXPECT_EQ(a.ways[i].clearWidth, b.ways[i].clearWidth);
  }
  ASSERT_EQ(a.picture.has_value(), b.picture.has_value());
  if (a.picture) {
    ASSERT_EQ(a.picture->shadows.size(), b.picture->shadows.size());
    for (std::size_t i = 0; i < a.picture->shadows.size(); ++i) {
      EXPECT_EQ(a.picture->shadows[i].shadow.worst, b.picture->shadows[i].shadow.worst);
    }
  }
  ASSERT_EQ(a.balls.size(), b.balls.size());
  for (std::size_t i = 0; i < a.balls.size(); ++i)
    EXPECT_EQ(a.balls[i].capture.share, b.balls[i].capture.share);
  ASSERT_EQ(a.obstacles->size(), b.obstacles->size());
}

}  // namespace baywright::testing
