// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "panels/field.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

Job everything() {
  Job job = testing::garage(8.0, 7.0)
                .withDoor("A", 1.0)
                .withShelf("C", 1.0, 1.5, 0.4, 1.9)
                .withColumn(Vec2(1, 6), 0.1, 2.4)
                .withGolfer(1.8, Hand::Right)
                .withClub()
                .job();
  PlanScan scan;
  scan.id = job.takeId();
  scan.name = "Plan";
  scan.file = std::make_shared<const Blob>(Blob{"plan.png", "bytes"});
  job.planScans.push_back(scan);
  Measurement height;
  height.id = job.takeId();
  height.kind = MeasurementKind::CeilingHeight;
  height.position = {2, 3};
  height.value = 2.4;
  job.measurements.push_back(height);
  Measurement diagonal;
  diagonal.id = job.takeId();
  diagonal.kind = MeasurementKind::Diagonal;
  diagonal.from = job.room.walls[0].id;
  diagonal.to = job.room.walls[2].id;
  diagonal.value = 10.63;
  job.measurements.push_back(diagonal);
  return job;
}

TEST(Fields, AreThereForEveryThing) {
  const Job job = everything();
  for (const Thing& thing : allThings(job)) EXPECT_FALSE(fieldsOf(job, thing.id).empty()) << thing.name;
  EXPECT_TRUE(fieldsOf(job, Id{}).empty());
}

TEST(Fields, WrittenWithWhatTheyReadChangeNothing) {
  const Job job = everything();
  for (const Thing& thing : allThings(job)) {
    for (const Field& field : fieldsOf(job, thing.id)) {
      // A wall's length is measured anew each time: writing it sets how well it is known.
      if (thing.kind == ThingKind::Wall && field.kind == PropertyKind::Measured) continue;
      const Result<Job> written = field.write(job, field.read(job));
      ASSERT_TRUE(written.has_value())
          << thing.name << " / " << field.label.toStdString() << ": " << written.error().sentence();
      EXPECT_EQ(*written, job) << thing.name << " / " << field.label.toStdString();
    }
  }
}

TEST(Fields, OfTheJobItselfAreReadAndWritten) {
  const Job job = everything();
  for (const std::vector<Field>& fields : {titleFields(), requirementFields()}) {
    ASSERT_FALSE(fields.empty());
    for (const Field& field : fields)
      EXPECT_EQ(field.write(job, field.read(job)).value(), job) << field.label.toStdString();
  }
}

TEST(Fields, RefuseWhatNoJobMayHold) {
  const Job job = everything();
  const Id golfer = job.golfers.front().id;
  for (const Field& field : fieldsOf(job, golfer)) {
    if (field.label != QLatin1String("Stature")) continue;
    EXPECT_FALSE(field.write(job, FieldValue(taped(0.2))).has_value());
    EXPECT_FALSE(field.write(job, FieldValue(taped(5.0))).has_value());
    EXPECT_TRUE(field.write(job, FieldValue(taped(1.9))).has_value());
    return;
  }
  FAIL() << "A golfer has no stature to type.";
}

}  // namespace
}  // namespace baywright
