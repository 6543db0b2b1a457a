// SPDX-License-Identifier: Apache-2.0
#include "geometry/homography.h"

#include <Eigen/QR>
#include <Eigen/SVD>
#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

namespace baywright {

namespace {

/// Shares of the spread of the points, below which they count as one point or as lying on a line. Pictures
/// are clicked to a thousandth at best, so only what is truly degenerate falls under them.
constexpr double kSamePlace = 1e-9;
constexpr double kOnALine = 1e-9;
/// Singular values and determinants below this share of the largest are rounding.
constexpr double kSingular = 1e-12;

Homography scaled(const Mat3& matrix, double sign) {
  return {matrix * (sign / matrix.cwiseAbs().maxCoeff())};
}

double depthAt(const Mat3& matrix, const Vec2& p) {
  return matrix.row(2).dot(raised(p, 1));
}

/// Shift to the mean, scale to a mean distance of sqrt(2).
Mat3 normalising(std::span<const Vec2> points) {
  Vec2 mean = Vec2::Zero();
  for (const Vec2& p : points) mean += p;
  mean /= static_cast<double>(points.size());
  double distance = 0;
  for (const Vec2& p : points) distance += (p - mean).norm();
  const double scale = std::sqrt(2.0) * static_cast<double>(points.size()) / distance;
  Mat3 matrix;
  matrix << scale, 0, -scale * mean.x(), 0, scale, -scale * mean.y(), 0, 0, 1;
  return matrix;
}

std::string pairs(std::initializer_list<std::size_t> indices) {
  std::string text = "points";
  for (const std::size_t i : indices) text += " " + std::to_string(i + 1);
  return text;
}

double spreadOf(std::span<const Vec2> points) {
  double spread = 0;
  for (const Vec2& p : points) spread = std::max(spread, (p - points[0]).norm());
  return spread;
}

Result<void> checkPlaces(std::span<const Vec2> points) {
  for (const Vec2& p : points) {
    if (!p.allFinite()) return fail("A coordinate is not a finite number.");
  }
  const double spread = spreadOf(points);
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (!((points[i] - points[j]).norm() > kSamePlace * spread)) {
        return fail("Two points are in the same place.", pairs({j, i}), "Move one of them.");
      }
    }
  }
  return {};
}

bool onALine(const Vec2& a, const Vec2& b, const Vec2& c, double spread) {
  return std::abs(cross(b - a, c - a)) <= kOnALine * spread * spread;
}

Result<void> checkFourCorners(std::span<const Vec2> points) {
  if (const auto ok = checkPlaces(points); !ok) return ok;
  const double spread = spreadOf(points);
  for (std::size_t out = 0; out < 4; ++out) {
    const std::array<std::size_t, 3> on{(out + 1) % 4, (out + 2) % 4, (out + 3) % 4};
    if (onALine(points[on[0]], points[on[1]], points[on[2]], spread)) {
      return fail("Three of the four points lie on a line.", pairs({on[0], on[1], on[2]}),
                  "Choose four corners, no three of them in line.");
    }
  }
  return {};
}

/// Whether the points without the one at `left` lie on a line.
bool lineWithout(std::span<const Vec2> points, std::size_t left) {
  const std::size_t first = left == 0 ? 1 : 0;
  std::size_t far = first;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (i != left && (points[i] - points[first]).norm() > (points[far] - points[first]).norm()) far = i;
  }
  const double spread = spreadOf(points);
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (i != left && !onALine(points[first], points[far], points[i], spread)) return false;
  }
  return true;
}

Result<void> checkPoints(std::span<const Vec2> points) {
  if (points.size() == 4) return checkFourCorners(points);
  if (const auto ok = checkPlaces(points); !ok) return ok;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (lineWithout(points, i)) {
      return fail("All points but one lie on a line.", {}, "Add points away from that line.");
    }
  }
  return {};
}

using SquareSvd = Eigen::JacobiSVD<Eigen::MatrixXd, Eigen::NoQRPreconditioner>;

struct Solution {
  Mat3 matrix;
  double condition = 1;
};

/// Two equations a pair, in normalised coordinates; the map is the null vector.
Solution solve(std::span<const Vec2> from, std::span<const Vec2> to, const Mat3& fromScale,
               const Mat3& toScale) {
  const auto count = static_cast<Eigen::Index>(from.size());
  // At least nine rows, so that the last right singular vector is there for four pairs.
  Eigen::MatrixXd equations = Eigen::MatrixXd::Zero(std::max<Eigen::Index>(2 * count, 9), 9);
  for (Eigen::Index i = 0; i < count; ++i) {
    const Vec3 p = fromScale * raised(from[static_cast<std::size_t>(i)], 1);
    const Vec3 q = toScale * raised(to[static_cast<std::size_t>(i)], 1);
    equations.block<1, 3>(2 * i, 3) = -p.transpose();
    equations.block<1, 3>(2 * i, 6) = q.y() * p.transpose();
    equations.block<1, 3>(2 * i + 1, 0) = p.transpose();
    equations.block<1, 3>(2 * i + 1, 6) = -q.x() * p.transpose();
  }
  // To square form first: the singular values stay, and small square ones are cheap to find (and to compile).
  const Eigen::HouseholderQR<Eigen::MatrixXd> qr(equations);
  const Eigen::MatrixXd square = qr.matrixQR().topRows(9).triangularView<Eigen::Upper>();
  const SquareSvd svd(square, Eigen::ComputeFullV);
  const Eigen::VectorXd h = svd.matrixV().col(8);
  Solution solution;
  solution.matrix << h(0), h(1), h(2), h(3), h(4), h(5), h(6), h(7), h(8);
  const SquareSvd ofMap(Eigen::MatrixXd(solution.matrix), 0);
  solution.condition = std::max(svd.singularValues()(0) / svd.singularValues()(7),
                                ofMap.singularValues()(0) / ofMap.singularValues()(2));
  return solution;
}

Result<double> commonSign(const Mat3& matrix, std::span<const Vec2> points) {
  const double sign = depthAt(matrix, points[0]) < 0 ? -1 : 1;
  for (const Vec2& p : points) {
    if (!(sign * depthAt(matrix, p) > 0)) {
      return fail("The points go round in a different order in the two planes.", {},
                  "Give the points of both planes in the same order.");
    }
  }
  return sign;
}

}  // namespace

Result<HomographyFit> homographyFrom(std::span<const PointPair> given) {
  if (given.size() < 4) return fail("At least four pairs of points are needed.");
  std::vector<Vec2> from;
  std::vector<Vec2> to;
  for (const PointPair& pair : given) {
    from.push_back(pair.from);
    to.push_back(pair.to);
  }
  for (const auto& plane : {from, to}) {
    if (const auto ok = checkPoints(plane); !ok) return tl::unexpected(ok.error());
  }

  const Mat3 fromScale = normalising(from);
  const Mat3 toScale = normalising(to);
  const Solution solution = solve(from, to, fromScale, toScale);
  if (!(solution.condition < 1 / kSingular)) {
    return fail("The points do not fix the map between the two planes.", {},
                "Spread them out, no three in line.");
  }
  const Mat3 matrix = toScale.inverse() * solution.matrix * fromScale;
  const auto sign = commonSign(matrix, from);
  if (!sign) return tl::unexpected(sign.error());

  HomographyFit fit{scaled(matrix, *sign), 0, solution.condition};
  double squares = 0;
  for (const PointPair& pair : given) {
    const auto image = mapped(fit.map, pair.from);
    if (!image) return tl::unexpected(image.error());
    squares += (*image - pair.to).squaredNorm();
  }
  fit.rms = std::sqrt(squares / static_cast<double>(given.size()));
  return fit;
}

Result<Homography> homographyFromUnitSquare(std::span<const Vec2, 4> corners) {
  if (const auto ok = checkFourCorners(corners); !ok) return tl::unexpected(ok.error());
  const auto& [p0, p1, p2, p3] = std::tie(corners[0], corners[1], corners[2], corners[3]);
  const Vec2 sum = p0 - p1 + p2 - p3;
  const Vec2 d1 = p1 - p2;
  const Vec2 d2 = p3 - p2;
  const double g = cross(sum, d2) / cross(d1, d2);
  const double h = cross(d1, sum) / cross(d1, d2);
  Mat3 matrix;
  matrix.topLeftCorner<2, 1>() = p1 - p0 + g * p1;
  matrix.block<2, 1>(0, 1) = p3 - p0 + h * p3;
  matrix.topRightCorner<2, 1>() = p0;
  matrix.row(2) << g, h, 1;
  const std::array<Vec2, 4> square{Vec2(0, 0), Vec2(1, 0), Vec2(1, 1), Vec2(0, 1)};
  const auto sign = commonSign(matrix, square);
  if (!sign) return tl::unexpected(sign.error());
  return scaled(matrix, *sign);
}

namespace {

/// The third component, or nothing where it is rounding only.
Result<double> depthOrFail(const Homography& map, const Vec2& p) {
  const double depth = depthAt(map.matrix, p);
  const double terms = map.matrix.row(2).cwiseAbs().dot(raised(p.cwiseAbs(), 1));
  if (!(std::abs(depth) > kSingular * terms)) return fail("The point has no image: it lies at the horizon.");
  return depth;
}

}  // namespace

Result<Vec2> mapped(const Homography& map, const Vec2& p) {
  const auto depth = depthOrFail(map, p);
  if (!depth) return tl::unexpected(depth.error());
  return Vec2(map.matrix.topRows<2>() * raised(p, 1) / *depth);
}

double depthRatio(const Homography& map, const Vec2& p, const Vec2& reference) {
  return depthAt(map.matrix, p) / depthAt(map.matrix, reference);
}

Result<Mat2> jacobianAt(const Homography& map, const Vec2& p) {
  const auto depth = depthOrFail(map, p);
  if (!depth) return tl::unexpected(depth.error());
  const Vec2 image = map.matrix.topRows<2>() * raised(p, 1) / *depth;
  return Mat2((map.matrix.topLeftCorner<2, 2>() - image * map.matrix.bottomLeftCorner<1, 2>()) / *depth);
}

Result<Homography> inverse(const Homography& map) {
  Mat3 adjugate;
  adjugate.row(0) = map.matrix.col(1).cross(map.matrix.col(2));
  adjugate.row(1) = map.matrix.col(2).cross(map.matrix.col(0));
  adjugate.row(2) = map.matrix.col(0).cross(map.matrix.col(1));
  const double determinant = adjugate.row(0).dot(map.matrix.col(0));
  if (!adjugate.allFinite() || determinant == 0)
    return fail("The map flattens its plane and has no inverse.");
  return scaled(adjugate, determinant < 0 ? -1 : 1);
}

Homography composed(const Homography& outer, const Homography& inner) {
  return scaled(outer.matrix * inner.matrix, 1);
}

}  // namespace baywright
