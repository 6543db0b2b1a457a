// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_min_cut.h"

#include <algorithm>
#include <limits>

namespace baywright {
namespace {

constexpr double kNothing = 1e-12;  ///< square metres of room in a link that count for none

}  // namespace

void MinCut::cost(std::size_t thing, double inside, double outside) {
  costs_[thing].inside += inside;
  costs_[thing].outside += outside;
}

void MinCut::parting(std::size_t first, std::size_t second, double cost) {
  link(first, second, cost, cost);
}

void MinCut::link(std::size_t from, std::size_t to, double forward, double backward) {
  links_[from].push_back({to, forward, links_[to].size()});
  links_[to].push_back({from, backward, links_[from].size() - 1});
}

bool MinCut::measureLevels() {
  level_.assign(links_.size(), -1);
  level_[source()] = 0;
  std::vector<std::size_t> queue{source()};
  for (std::size_t i = 0; i < queue.size(); ++i)
    for (const Link& link : links_[queue[i]]) {
      if (link.room <= kNothing || level_[link.to] >= 0) continue;
      level_[link.to] = level_[queue[i]] + 1;
      queue.push_back(link.to);
    }
  return level_[sink()] >= 0;
}

double MinCut::push(std::size_t node, double most) {
  if (node == sink()) return most;
  for (std::size_t& i = next_[node]; i < links_[node].size(); ++i) {
    Link& link = links_[node][i];
    if (link.room <= kNothing || level_[link.to] != level_[node] + 1) continue;
    const double pushed = push(link.to, std::min(most, link.room));
    if (pushed <= kNothing) continue;
    link.room -= pushed;
    links_[link.to][link.back].room += pushed;
    return pushed;
  }
  return 0;
}

std::vector<bool> MinCut::solve() {
  for (std::size_t thing = 0; thing < costs_.size(); ++thing) {
    link(source(), thing, costs_[thing].outside, 0);
    link(thing, sink(), costs_[thing].inside, 0);
  }
  while (measureLevels()) {
    next_.assign(links_.size(), 0);
    while (push(source(), std::numeric_limits<double>::infinity()) > kNothing) {
    }
  }
  std::vector<bool> inside(costs_.size());
  for (std::size_t thing = 0; thing < costs_.size(); ++thing) inside[thing] = level_[thing] >= 0;
  return inside;
}

}  // namespace baywright
