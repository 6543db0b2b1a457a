// SPDX-License-Identifier: Apache-2.0
// Adjustments of horizontal networks that are published with their results. The numbers are collected in F.
// Krumm, Geodetic Network Adjustment Examples, rev. 3.5, University of Stuttgart 2020, and in the test data
// of GNU Gama 2.24 (tests/krumm/input/2D), each from the textbook that is named at its test.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "survey/adjustment.h"
#include "survey/blunder_test.h"

namespace baywright {
namespace {

/// Points by name instead of corners; what is fixed in the source is read with a sigma of nearly nothing.
struct Network {
  SurveyNetwork network;
  Ring drawn;

  void point(const std::string& name, double x, double y) {
    network.corners.push_back(Id{static_cast<std::uint32_t>(network.corners.size() + 1)});
    network.names.push_back(name);
    drawn.push_back({x, y});
  }
  int place(const std::string& name) const {
    return static_cast<int>(std::find(network.names.begin(), network.names.end(), name) -
                            network.names.begin());
  }
  void distance(const std::string& from, const std::string& to, double value, double sigma) {
    Observation o;
    o.from = place(from);
    o.to = place(to);
    o.value = value;
    o.sigma = sigma;
    o.reading = Id{static_cast<std::uint32_t>(100 + network.observations.size())};
    o.what = from + "-" + to;
    network.observations.push_back(o);
  }
  /// At a point, clockwise from one to another as theodolites count.
  void clockwise(const std::string& at, const std::string& from, const std::string& to, double degrees,
                 double minutes, double seconds, double sigmaSeconds) {
    Observation o;
    o.kind = ObservationKind::Angle;
    o.at = place(at);
    o.from = place(to);
    o.to = place(from);
    o.value = (degrees + minutes / 60 + seconds / 3600) * kPi / 180;
    o.sigma = sigmaSeconds / 3600 * kPi / 180;
    o.reading = Id{static_cast<std::uint32_t>(100 + network.observations.size())};
    o.what = "angle at " + at;
    network.observations.push_back(o);
  }
  SurveyAdjustment adjusted() const {
    const auto made = adjust(network, drawn);
    EXPECT_TRUE(made.has_value()) << made.error().sentence();
    return *made;
  }
};

/// Sigma of what a source holds fixed, metres.
constexpr double kFixed = 1e-7;

/// A published point with its standard deviations a posteriori, which scale with sqrt(v^T P v / degrees).
struct Published {
  std::string name;
  double x, y;
  double sigmaX, sigmaY;
};

void expectPoints(const SurveyAdjustment& made, const std::vector<Published>& points, double tolerance,
                  double sigmaTolerance) {
  const double scale = std::sqrt(made.weightedSquares / made.degreesOfFreedom);
  for (const Published& point : points) {
    const auto found = std::find_if(made.corners.begin(), made.corners.end(),
                                    [&](const AdjustedCorner& c) { return c.name == point.name; });
    ASSERT_NE(found, made.corners.end());
    EXPECT_NEAR(found->position.x(), point.x, tolerance) << point.name;
    EXPECT_NEAR(found->position.y(), point.y, tolerance) << point.name;
    EXPECT_NEAR(scale * found->covariance.sigmaAlong({1, 0}), point.sigmaX, sigmaTolerance) << point.name;
    EXPECT_NEAR(scale * found->covariance.sigmaAlong({0, 1}), point.sigmaY, sigmaTolerance) << point.name;
  }
}

double residualOf(const SurveyAdjustment& made, const std::string& what) {
  for (const AdjustedReading& reading : made.readings)
    if (reading.what == what) return reading.residual;
  ADD_FAILURE() << what;
  return 0;
}

// W. Benning, Statistik in Geodaesie, Geoinformation und Bauwesen, 2011, ex. 8-2, p. 256; Krumm 3.1.1, pp.
// 48-50: a square of a kilometre, two points fixed, five distances.
TEST(SurveyReference, BenningTrilateration) {
  Network n;
  n.point("1", 0, 1000);
  n.point("3", 0, 0);
  n.point("4", 1000, 0);
  n.point("2", 1000, 1000);
  // The datum of the program is one point and one direction, so the ring begins with the two fixed points.
  std::rotate(n.drawn.begin(), n.drawn.begin() + 3, n.drawn.end());
  std::rotate(n.network.names.begin(), n.network.names.begin() + 3, n.network.names.end());
  n.distance("1", "2", 1000, kFixed);
  n.distance("1", "3", 1000.02, 0.01);
  n.distance("1", "4", 1414.20, 0.01);
  n.distance("2", "3", 1414.24, 0.01);
  n.distance("2", "4", 999.98, 0.01);
  n.distance("3", "4", 1000.00, 0.01);
  const SurveyAdjustment made = n.adjusted();
  EXPECT_EQ(made.degreesOfFreedom, 1);
  EXPECT_NEAR(0.01 * std::sqrt(made.weightedSquares), 6.882e-3, 0.5e-6);
  expectPoints(made, {{"3", -0.0096, -0.0226, 9.01e-3, 6.37e-3}, {"4", 999.9930, 0.0174, 9.01e-3, 6.37e-3}},
               0.5e-4, 0.5e-5);
  EXPECT_NEAR(residualOf(made, "1-3"), 0.260e-2, 0.5e-5);
  EXPECT_NEAR(residualOf(made, "1-4"), -0.368e-2, 0.5e-5);
  EXPECT_NEAR(residualOf(made, "2-3"), -0.368e-2, 0.5e-5);
  EXPECT_NEAR(residualOf(made, "2-4"), 0.260e-2, 0.5e-5);
  EXPECT_NEAR(residualOf(made, "3-4"), 0.260e-2, 0.5e-5);
}

// C. Ghilani, Adjustment Computations, 5th ed. 2010, ex. 14.5, p. 251, and ex. 19.3, p. 404: Badger and Bucky
// are fixed, five distances in feet. The program may hold any unit of length here.
TEST(SurveyReference, GhilaniTrilateration) {
  Network n;
  n.point("Badger", 2410000.000, 390000.000);
  n.point("Bucky", 2411820.000, 386881.222);
  n.point("Campus", 2416892.670, 387603.450);
  n.point("Wisconsin", 2415776.819, 391043.461);
  n.distance("Badger", "Bucky", (n.drawn[1] - n.drawn[0]).norm(), kFixed);
  n.distance("Badger", "Wisconsin", 5870.302, 0.01);
  n.distance("Badger", "Campus", 7297.588, 0.01);
  n.distance("Wisconsin", "Campus", 3616.434, 0.01);
  n.distance("Wisconsin", "Bucky", 5742.878, 0.01);
  n.distance("Campus", "Bucky", 5123.760, 0.01);
  expectPoints(n.adjusted(),
               {{"Wisconsin", 2415776.9044, 391043.2945, 0.14879, 0.22061},
                {"Campus", 2416892.6955, 387603.2551, 0.10378, 0.27054}},
               0.5e-4, 1e-5);
}

// C. Ghilani & P. Wolf, Elementary Surveying, 13th ed. 2012, ch. 16.9.5, pp. 450-456: a traverse of ten
// points with 14 angles and 12 distances, one point and one azimuth (150 deg 42' 51") fixed, as the program's
// own datum is.
TEST(SurveyReference, GhilaniAndWolfTraverse) {
  Network n;
  n.point("A", 415.273, 929.868);
  const double azimuth = (150 + 42 / 60.0 + 51 / 3600.0) * kPi / 180;
  n.point("B", 415.273 + 189.43 * std::sin(azimuth), 929.868 + 189.43 * std::cos(azimuth));
  n.point("C", 618.952, 815.353);
  n.point("D", 723.852, 753.287);
  n.point("E", 826.128, 856.438);
  n.point("F", 794.659, 1021.655);
  n.point("G", 578.741, 1103.826);
  n.point("H", 652.221, 980.245);
  n.point("K", 713.362, 877.418);
  n.point("J", 600.595, 899.272);
  n.clockwise("A", "G", "B", 107, 29, 40, 8.9);
  n.clockwise("B", "A", "C", 94, 44, 24, 11.7);
  n.clockwise("C", "B", "D", 235, 9, 26, 13.7);
  n.clockwise("D", "C", "E", 104, 8, 40, 12.7);
  n.clockwise("E", "D", "F", 124, 27, 36, 11.2);
  n.clockwise("F", "E", "G", 121, 37, 8, 9.5);
  n.clockwise("G", "F", "A", 112, 23, 0, 8.3);
  n.clockwise("G", "F", "H", 38, 25, 46, 9.9);
  n.clockwise("H", "G", "J", 243, 15, 20, 14.6);
  n.clockwise("J", "H", "C", 135, 8, 30, 18.0);
  n.clockwise("H", "J", "G", 116, 44, 44, 14.6);
  n.clockwise("H", "J", "K", 296, 44, 38, 15.0);
  n.clockwise("K", "H", "E", 131, 16, 30, 14.3);
  n.clockwise("E", "K", "F", 68, 40, 36, 12.3);
  const std::tuple<const char*, const char*, double> distances[] = {
      {"A", "B", 189.436}, {"B", "C", 122.050}, {"C", "D", 121.901}, {"D", "E", 145.256},
      {"E", "F", 168.180}, {"F", "G", 231.021}, {"G", "A", 238.714}, {"G", "H", 143.780},
      {"H", "K", 119.631}, {"K", "E", 114.695}, {"H", "J", 96.036},  {"J", "C", 85.908}};
  for (const auto& [from, to, value] : distances) n.distance(from, to, value, 0.007);
  const SurveyAdjustment made = n.adjusted();
  EXPECT_EQ(made.degreesOfFreedom, 9);
  EXPECT_TRUE(made.assumed.empty());
  expectPoints(made,
               {{"B", 507.9380, 764.6451, 2.14e-3, 3.82e-3},
                {"C", 618.9547, 815.3499, 4.59e-3, 4.93e-3},
                {"D", 723.8666, 753.2855, 6.42e-3, 6.85e-3},
                {"E", 826.1331, 856.4409, 5.28e-3, 9.23e-3},
                {"F", 794.6611, 1021.6540, 5.81e-3, 8.59e-3},
                {"G", 578.7455, 1103.8272, 5.78e-3, 4.51e-3},
                {"H", 652.2263, 980.2450, 4.93e-3, 6.09e-3},
                {"J", 600.5991, 899.2696, 4.97e-3, 5.75e-3},
                {"K", 713.3703, 877.4179, 5.58e-3, 7.33e-3}},
               0.6e-4, 0.6e-5);
}

// C. Ghilani, Adjustment Computations, 5th ed. 2010, ex. 21.1, p. 446 (data snooping). Of its 17 angles and
// 19 distances two are blunders, by the notes in GNU Gama's copy of the data: the angle at 103 and the
// distance 3-4.
TEST(SurveyReference, GhilaniDataSnooping) {
  Network n;
  n.point("2000", 2476334.60 / 100, 419710.09 / 100);
  n.point("2001", 2476297.98 / 100, 419266.82 / 100);
  n.point("201", 2476576.23 / 100, 419589.23 / 100);
  n.point("202", 2476948.74 / 100, 419331.29 / 100);
  n.point("203", 2477463.84 / 100, 419819.58 / 100);
  n.point("2", 2477497.89 / 100, 419951.98 / 100);
  n.point("3", 2477832.55 / 100, 420210.21 / 100);
  n.point("4", 2477991.64 / 100, 420400.58 / 100);
  n.point("5", 2477630.43 / 100, 420567.45 / 100);
  n.point("6", 2477665.22 / 100, 420323.32 / 100);
  n.point("1", 2477233.72 / 100, 420353.59 / 100);
  n.point("103", 2476735.05 / 100, 419912.42 / 100);
  n.point("102", 2476455.89 / 100, 419741.38 / 100);
  n.clockwise("1", "2", "3", 316, 48, 0.5, 6.3);
  n.clockwise("3", "2", "1", 51, 7, 11.0, 7.2);
  n.clockwise("3", "2", "4", 167, 32, 28.0, 14.5);
  n.clockwise("3", "2", "5", 98, 9, 36.5, 10.3);
  n.clockwise("3", "2", "6", 71, 42, 51.5, 15.1);
  n.clockwise("3", "203", "2", 8, 59, 56.0, 6.5);
  n.clockwise("5", "1", "3", 268, 49, 32.5, 9.8);
  n.clockwise("5", "2", "3", 318, 20, 54.5, 7.0);
  n.clockwise("5", "3", "4", 324, 17, 44.0, 8.1);
  n.clockwise("5", "6", "3", 338, 36, 38.5, 10.7);
  n.clockwise("102", "2000", "103", 162, 58, 16.0, 28.9);
  n.clockwise("103", "102", "1", 172, 1, 43.0, 11.8);
  n.clockwise("201", "2001", "202", 263, 54, 18.7, 9.7);
  n.clockwise("202", "201", "203", 101, 49, 55.0, 8.1);
  n.clockwise("203", "202", "3", 176, 49, 10.0, 8.4);
  n.clockwise("2000", "102", "2001", 109, 10, 54.0, 25.5);
  n.clockwise("2001", "2000", "201", 36, 4, 26.2, 7.4);
  const std::tuple<const char*, const char*, double> distances[] = {
      {"1", "2", 480.71},     {"1", "3", 615.74},      {"3", "1", 615.74},     {"3", "2", 422.70},
      {"3", "4", 298.10},     {"3", "5", 410.44},      {"3", "6", 201.98},     {"5", "1", 450.67},
      {"5", "2", 629.58},     {"5", "3", 410.46},      {"5", "4", 397.89},     {"5", "6", 246.61},
      {"102", "103", 327.37}, {"103", "1", 665.79},    {"201", "202", 453.10}, {"202", "203", 709.78},
      {"203", "3", 537.18},   {"2000", "102", 125.24}, {"2001", "201", 425.90}};
  for (const auto& [from, to, value] : distances) n.distance(from, to, value / 100, 0.022 / 100);
  n.distance("2000", "2001", (n.drawn[1] - n.drawn[0]).norm(), kFixed);
  const SurveyAdjustment made = n.adjusted();
  EXPECT_EQ(made.degreesOfFreedom, 36 - 22);
  const BlunderTest test = testForBlunders(n.network, made, UnitSystem{});
  EXPECT_LT(test.tail, 1e-6);
  std::vector<std::string> named;
  for (const Suspicion& suspicion : test.suspicions) named.push_back(suspicion.suspects.front().what);
  EXPECT_EQ(named, (std::vector<std::string>{"3-4", "angle at 103"}));
  // Both come out as the round figures that slips are made of: 50 m and two degrees.
  EXPECT_NEAR(100 * test.suspicions[0].suspects[0].error, 50, 0.1);
  EXPECT_NEAR(test.suspicions[1].suspects[0].error * 180 / kPi, 2, 0.05);
}

}  // namespace
}  // namespace baywright
