// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <vector>

namespace baywright {

/// Labels things "inside" or "outside" at the least total cost: each has a cost for either label, and pairs
/// have one for being parted. The exact minimum, by the maximum flow from inside to outside (Dinic 1970).
class MinCut {
 public:
  explicit MinCut(std::size_t things) : costs_(things), links_(things + 2) {}

  /// All costs must be >= 0.
  void cost(std::size_t thing, double inside, double outside);
  void parting(std::size_t first, std::size_t second, double cost);

  /// True: inside.
  std::vector<bool> solve();

 private:
  struct Link {
    std::size_t to = 0;
    double room = 0;
    std::size_t back = 0;  ///< place of the reverse link at `to`
  };
  struct Costs {
    double inside = 0;
    double outside = 0;
  };

  void link(std::size_t from, std::size_t to, double forward, double backward);
  bool measureLevels();
  double push(std::size_t node, double most);

  std::size_t source() const { return costs_.size(); }
  std::size_t sink() const { return costs_.size() + 1; }

  std::vector<Costs> costs_;
  std::vector<std::vector<Link>> links_;
  std::vector<int> level_;
  std::vector<std::size_t> next_;
};

}  // namespace baywright
