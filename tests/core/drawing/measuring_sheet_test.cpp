// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "drawing/paper.h"
#include "drawing/sheets.h"
#include "drawing/text_box.h"
#include "drawn_job.h"
#include "survey/measuring_tasks.h"

namespace baywright {
namespace {

using namespace baywright::testing;

std::vector<SheetPage> measuringSheet(const Job& job, const SheetRequest& request = {}) {
  const auto pages = makeSheet("measuring", job, Assessment{}, request);
  EXPECT_TRUE(pages.has_value()) << pages.error().sentence();
  return pages.value_or(std::vector<SheetPage>{});
}

bool has(const std::vector<SheetPage>& pages, const std::string& wanted) {
  return std::any_of(pages.begin(), pages.end(), [&](const SheetPage& page) {
    return std::any_of(page.marks.texts.begin(), page.marks.texts.end(),
                       [&](const Text& text) { return text.text.find(wanted) != std::string::npos; });
  });
}

/// Boxes of a width, millimetres.
std::ptrdiff_t boxes(const std::vector<SheetPage>& pages, double width) {
  std::ptrdiff_t count = 0;
  for (const SheetPage& page : pages)
    count += std::count_if(page.marks.paths.begin(), page.marks.paths.end(), [&](const Path& path) {
      if (!path.closed || path.rings.size() != 1 || path.rings[0].size() != 4) return false;
      const Vec2 size = path.rings[0][2] - path.rings[0][0];
      return std::abs(std::abs(size.x()) - width) < 1e-9 && std::abs(std::abs(size.y()) - 7) < 1e-9;
    });
  return count;
}

Job guessedGarage() {
  Job job = smallGarage();
  for (Wall& wall : job.room.walls) wall.startCovariance = PlanCovariance::isotropic(0.035);
  job.room.ceiling[0].height = notMeasured(2.4);
  job.room.openings[0].height = guessed(2.0);
  return job;
}

TEST(MeasuringSheet, HasABoxForEachThingToMeasure) {
  const Job job = guessedGarage();
  const auto tasks = measuringTasks(job);
  ASSERT_GE(tasks.size(), 7u);
  const auto pages = measuringSheet(job);
  EXPECT_EQ(pages.size(), 1u);
  EXPECT_EQ(boxes(pages, 34), static_cast<std::ptrdiff_t>(tasks.size()));
  EXPECT_EQ(boxes(pages, 18), 4);  // beside each wall of the sketch
  for (const MeasuringTask& task : tasks) EXPECT_TRUE(has(pages, task.what.substr(0, 12))) << task.what;
}

TEST(MeasuringSheet, WritesNumbersOfOnePlaceBesideEachOther) {
  // Sill and height of an opening are read at the same place; neither number may hide the other.
  Job job = guessedGarage();
  job.room.openings[0].sill = guessed(0);
  const auto tasks = measuringTasks(job);
  const auto pages = measuringSheet(job);
  const auto sill = std::find_if(tasks.begin(), tasks.end(),
                                 [](const MeasuringTask& task) { return task.what.starts_with("sill of"); });
  ASSERT_NE(sill, tasks.end());
  const auto number = sill - tasks.begin() + 1;
  EXPECT_TRUE(has(pages, std::to_string(number) + ", " + std::to_string(number + 1)));
}

TEST(MeasuringSheet, ShowsCornersAndTheLengthsThatAreKnown) {
  const auto pages = measuringSheet(smallGarage());
  for (const char* wanted : {"A", "B", "C", "D", "6.000 m", "4.000 m", "Measuring list"})
    EXPECT_TRUE(has(pages, wanted)) << wanted;
  EXPECT_EQ(boxes(pages, 18), 0);
}

TEST(MeasuringSheet, KeepsEverythingOnThePaper) {
  for (const Job& job : {guessedGarage(), slopedWorkshop()}) {
    for (const PaperSize paper : {PaperSize::A4, PaperSize::A3, PaperSize::A1}) {
      for (const Orientation orientation : {Orientation::Portrait, Orientation::Landscape}) {
        SheetRequest request;
        request.paper = paper;
        request.orientation = orientation;
        for (const SheetPage& page : measuringSheet(job, request)) {
          const auto ink = inkExtent(page.marks, 1);
          ASSERT_TRUE(ink.has_value());
          EXPECT_GE(ink->min().x(), 0);
          EXPECT_GE(ink->min().y(), 0);
          EXPECT_LE(ink->max().x(), page.widthMm);
          EXPECT_LE(ink->max().y(), page.heightMm);
        }
      }
    }
  }
}

TEST(MeasuringSheet, GoesOnWhereTheTableIsLong) {
  Job job = guessedGarage();
  for (int i = 0; i < 60; ++i) {
    Fixture shelf;
    shelf.id = job.takeId();
    shelf.name = "Shelf " + std::to_string(i);
    job.room.fixtures.push_back(shelf);
  }
  const auto pages = measuringSheet(job);
  EXPECT_GT(pages.size(), 1u);
  EXPECT_EQ(boxes(pages, 34), static_cast<std::ptrdiff_t>(measuringTasks(job).size()));
}

TEST(MeasuringSheet, IsRefusedForARoomWithoutWalls) {
  const auto pages = makeSheet("measuring", newJob(), Assessment{}, {});
  ASSERT_FALSE(pages.has_value());
  EXPECT_NE(pages.error().sentence().find("no walls"), std::string::npos);
}

}  // namespace
}  // namespace baywright
