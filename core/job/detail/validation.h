// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "job/job.h"
#include "job/limits.h"

/// What validate() is made of: one function a part of the document. Internal to `job`.
namespace baywright::detail {

/// Collects problems and words the frequent ones. Numbers are told in the job's unit.
class ProblemList {
 public:
  explicit ProblemList(const UnitSystem& units);

  void add(std::string what, std::string where, std::string next = {});

  // Each adds a sentence when the value lies outside its range; `what` is "width" or "lens shift".
  void length(const std::string& what, double metres, Range range, const std::string& where);
  void length(const std::string& what, const Dimension& dimension, Range range, const std::string& where);
  void angle(const std::string& what, double radians, Range range, const std::string& where);
  void number(const std::string& what, double value, Range range, const std::string& where);
  void point(const std::string& what, const Vec2& point, const std::string& where);
  /// A simple polygon of some area; `what` is "outline" or "region".
  void polygon(const std::string& what, const std::vector<Vec2>& corners, const std::string& where);

  std::string text(double metres) const;
  std::vector<Problem> take() { return std::move(problems_); }

 private:
  UnitSystem units_;
  std::vector<Problem> problems_;
};

/// Every number finite, every text of sane length, every id there once and not above lastId. Where this
/// finds anything, the others must not run.
std::vector<Problem> checkValues(const Job& job);
/// No list so long, and no outline of so many corners, that the checks below would take seconds. Likewise.
std::vector<Problem> checkCounts(const Job& job);

std::vector<Problem> checkRecord(const Job& job);  ///< units, requirements, measurements
std::vector<Problem> checkFloor(const Job& job);
std::vector<Problem> checkCeiling(const Job& job);
std::vector<Problem> checkOpenings(const Job& job);
std::vector<Problem> checkFixtures(const Job& job);
std::vector<Problem> checkPeople(const Job& job);
std::vector<Problem> checkOptions(const Job& job);
std::vector<Problem> checkScans(const Job& job);

}  // namespace baywright::detail
