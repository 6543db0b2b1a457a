// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_tasks.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;

bool wants(const std::vector<MeasuringTask>& tasks, const std::string& what) {
  return std::any_of(tasks.begin(), tasks.end(),
                     [&](const MeasuringTask& task) { return task.what.starts_with(what); });
}

TEST(MeasuringTasks, AreNoneBeforeThereAreWalls) {
  EXPECT_TRUE(measuringTasks(newJob()).empty());
}

TEST(MeasuringTasks, WantWallsAndDiagonalsOfARoomThatWasGuessed) {
  Job job = garage(6, 4).job();
  for (Wall& wall : job.room.walls) wall.startCovariance = PlanCovariance::isotropic(0.035);
  const auto tasks = measuringTasks(job);
  for (const char* wall : {"wall A", "wall B", "wall C", "wall D"}) EXPECT_TRUE(wants(tasks, wall)) << wall;
  EXPECT_TRUE(wants(tasks, "diagonal"));
  ASSERT_TRUE(tasks[0].from && tasks[0].to);
  EXPECT_EQ((*tasks[0].to - *tasks[0].from).norm(), 6);
}

TEST(MeasuringTasks, DropWhatWasRead) {
  Job job = garage(6, 4).job();
  for (Wall& wall : job.room.walls) wall.startCovariance = PlanCovariance::isotropic(0.035);
  const auto read = [&](MeasurementKind kind, std::size_t from, std::size_t to) {
    Measurement reading;
    reading.id = job.takeId();
    reading.kind = kind;
    reading.from = job.room.walls[from].id;
    reading.to = job.room.walls[to].id;
    reading.value = (job.room.walls[to].start - job.room.walls[from].start).norm();
    reading.how = Instrument::Laser;
    job.measurements.push_back(reading);
  };
  for (std::size_t i = 0; i < 4; ++i) read(MeasurementKind::WallLength, i, (i + 1) % 4);
  EXPECT_FALSE(wants(measuringTasks(job), "wall"));
  EXPECT_TRUE(wants(measuringTasks(job), "diagonal"));
  read(MeasurementKind::Diagonal, 0, 2);
  read(MeasurementKind::Diagonal, 1, 3);
  EXPECT_FALSE(wants(measuringTasks(job), "diagonal"));
}

TEST(MeasuringTasks, WantHeightsAndSizesThatNobodyMeasured) {
  Job job = garage(6, 4).withDoor("B", 1.0).withShelf("A", 1, 1, 0.4, 1.8, "Shelf").job();
  job.room.ceiling[0].height = notMeasured(2.4);
  job.room.openings[0].height = guessed(2.0);
  job.room.openings[0].offset = guessed(1.0);
  job.room.fixtures[0].top = guessed(1.8);
  const auto tasks = measuringTasks(job);
  EXPECT_TRUE(wants(tasks, "height of " + job.room.ceiling[0].name));
  EXPECT_TRUE(wants(tasks, "height of Door"));
  EXPECT_TRUE(wants(tasks, "Door from corner B"));
  EXPECT_FALSE(wants(tasks, "width of Door"));
  EXPECT_TRUE(wants(tasks, "top of Shelf"));
  EXPECT_FALSE(wants(tasks, "wall"));
}

}  // namespace
}  // namespace baywright
