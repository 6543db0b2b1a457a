// SPDX-License-Identifier: Apache-2.0
#include "models/measurements_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFont>

#include "support/job_builder.h"

namespace baywright {
namespace {

class Measurements : public ::testing::Test {
 protected:
  void SetUp() override { document.startWith(testing::garage(6.0, 4.0).job()); }

  QModelIndex cell(int row, MeasurementsModel::Column column) { return model.index(row, column); }
  bool type(int row, const char* text) {
    return model.setData(cell(row, MeasurementsModel::Read), QString::fromUtf8(text));
  }
  QString shown(int row, MeasurementsModel::Column column) { return cell(row, column).data().toString(); }

  Document document;
  MeasurementsModel model{document};
  QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Measurements, AskForEachWallInOrder) {
  model.askForWalls(Instrument::Laser);
  ASSERT_EQ(model.rowCount(), 4);
  EXPECT_EQ(shown(0, MeasurementsModel::What), QStringLiteral("wall A"));
  EXPECT_EQ(shown(3, MeasurementsModel::What), QStringLiteral("wall D"));
  EXPECT_EQ(shown(3, MeasurementsModel::By), QStringLiteral("laser"));
  EXPECT_TRUE(document.job().measurements.empty());
  model.askForWalls(Instrument::Laser);
  EXPECT_EQ(model.rowCount(), 4);
}

TEST_F(Measurements, BecomeReadingsOfTheJobWhenTyped) {
  model.askForWalls(Instrument::Tape);
  ASSERT_TRUE(type(0, "19' 8 1/2\""));
  ASSERT_EQ(document.job().measurements.size(), 1U);
  EXPECT_NEAR(document.job().measurements[0].value, (19 * 12 + 8.5) * 0.0254, 1e-12);
  EXPECT_EQ(document.job().measurements[0].from, document.job().room.walls[0].id);
  EXPECT_EQ(model.rowCount(), 4);
  document.undoStack().undo();
  EXPECT_EQ(model.rowCount(), 4);
  EXPECT_FALSE(model.idOf(cell(0, MeasurementsModel::Read)));
}

TEST_F(Measurements, SayBesideASuspectWhatItProbablyShouldBe) {
  model.askForWalls(Instrument::Tape);
  // Wall C was read 20 cm short.
  for (const char* length : {"6", "4", "5.8", "4"})
    ASSERT_TRUE(type(static_cast<int>(document.job().measurements.size()), length));
  const auto& walls = document.job().room.walls;
  Measurement diagonal;
  diagonal.kind = MeasurementKind::Diagonal;
  for (const std::size_t from : {0U, 1U}) {
    diagonal.from = walls[from].id;
    diagonal.to = walls[from + 2].id;
    model.ask({diagonal});
    ASSERT_TRUE(type(model.rowCount() - 1, "7.211"));
  }
  ASSERT_EQ(model.suspicions().size(), 1U);
  EXPECT_EQ(model.suspicions()[0].suspects[0].reading, document.job().measurements[2].id);
  EXPECT_TRUE(shown(2, MeasurementsModel::Remark).contains(QStringLiteral("probably 6.00")))
      << shown(2, MeasurementsModel::Remark).toStdString();
  EXPECT_TRUE(cell(2, MeasurementsModel::Read).data(Qt::FontRole).value<QFont>().bold());
  EXPECT_FALSE(cell(0, MeasurementsModel::Read).data(Qt::FontRole).isValid());
  ASSERT_TRUE(type(2, "6"));
  EXPECT_TRUE(model.suspicions().empty());
  EXPECT_TRUE(shown(2, MeasurementsModel::Remark).isEmpty());
}

TEST_F(Measurements, RefuseWhatIsNoLength) {
  QString told;
  QObject::connect(&document, &Document::problemRaised, &model, [&](const QString& text) { told = text; });
  model.askForWalls(Instrument::Tape);
  EXPECT_FALSE(type(0, "long"));
  EXPECT_FALSE(told.isEmpty());
  EXPECT_TRUE(document.job().measurements.empty());
  EXPECT_EQ(document.undoStack().count(), 0);
}

TEST_F(Measurements, KeepTheFigureWhenItIsConfirmedAsShown) {
  model.askForWalls(Instrument::Tape);
  ASSERT_TRUE(type(0, "6.00042 m"));
  type(0, shown(0, MeasurementsModel::Read).toUtf8().constData());
  EXPECT_DOUBLE_EQ(document.job().measurements[0].value, 6.00042);
}

TEST_F(Measurements, ReadAnglesInDegrees) {
  const auto& walls = document.job().room.walls;
  Measurement angle;
  angle.kind = MeasurementKind::Angle;
  angle.at = walls[1].id;
  angle.from = walls[0].id;
  angle.to = walls[2].id;
  model.ask({angle});
  EXPECT_EQ(shown(0, MeasurementsModel::What), QStringLiteral("angle at B"));
  ASSERT_TRUE(type(0, "90.5"));
  EXPECT_NEAR(document.job().measurements[0].value, 90.5 * kPi / 180, 1e-12);
}

TEST_F(Measurements, ShowTheResidualOfTheAdjustment) {
  model.askForWalls(Instrument::Tape);
  for (const auto& [row, text] : {std::pair(0, "6.00 m"), {1, "4.00 m"}, {2, "6.02 m"}, {3, "4.00 m"}})
    ASSERT_TRUE(type(row, text));
  Measurement diagonal;
  diagonal.kind = MeasurementKind::Diagonal;
  diagonal.from = document.job().room.walls[0].id;
  diagonal.to = document.job().room.walls[2].id;
  model.ask({diagonal});
  ASSERT_TRUE(type(4, "7.211 m"));
  diagonal.from = document.job().room.walls[1].id;
  diagonal.to = document.job().room.walls[3].id;
  model.ask({diagonal});
  ASSERT_TRUE(type(5, "7.211 m"));
  const Result<SurveyAdjustment> fit = adjust(document.job().room, document.job().measurements);
  ASSERT_TRUE(fit);
  ASSERT_TRUE(model.adjustment() && *model.adjustment());
  EXPECT_EQ((*model.adjustment())->ring(), fit->ring());
  EXPECT_LT(fit->readings[2].residual, -0.001);
  EXPECT_TRUE(shown(2, MeasurementsModel::OffBy).startsWith(QChar(0x2212)));
}

TEST_F(Measurements, AreSetAsideByTheirTick) {
  model.askForWalls(Instrument::Tape);
  ASSERT_TRUE(type(0, "6 m"));
  ASSERT_TRUE(model.setData(cell(0, MeasurementsModel::What), Qt::Unchecked, Qt::CheckStateRole));
  EXPECT_FALSE(document.job().measurements[0].used);
  EXPECT_EQ(shown(0, MeasurementsModel::Remark), QStringLiteral("set aside"));
}

TEST_F(Measurements, AreRemoved) {
  model.askForWalls(Instrument::Tape);
  ASSERT_TRUE(type(0, "6 m"));
  model.remove(cell(0, MeasurementsModel::What));
  EXPECT_TRUE(document.job().measurements.empty());
  EXPECT_EQ(model.rowCount(), 3);
  model.remove(cell(0, MeasurementsModel::What));
  EXPECT_EQ(model.rowCount(), 2);
}

}  // namespace
}  // namespace baywright
