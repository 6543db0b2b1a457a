// SPDX-License-Identifier: Apache-2.0
#include <cmath>
#include <cstdint>
#include <map>
#include <string_view>

#include "job/detail/validation.h"
#include "job/enum_names.h"
#include "job/fields.h"

namespace baywright::detail {
namespace {

/// Walks every stored field of a job and keeps the path to the one it is at.
class ValueWalk {
 public:
  explicit ValueWalk(const Job& job) : lastId_(job.lastId), problems_(job.units) {}

  std::vector<Problem> take() { return problems_.take(); }

  template <HasFields T>
  void operator()(std::string_view name, const T& thing) {
    const Step step(*this, std::string(name));
    visitFields(*this, thing);
  }
  template <class T>
  void operator()(std::string_view name, const std::vector<T>& list) {
    const Step step(*this, std::string(name));
    for (std::size_t i = 0; i < list.size(); ++i) (*this)(elementName(list[i], i), list[i]);
  }
  template <class T>
  void operator()(std::string_view name, const std::optional<T>& value) {
    if (value) (*this)(name, *value);
  }
  void operator()(std::string_view name, const FixtureShape& shape) {
    std::visit([&](const auto& held) { (*this)(name, held); }, shape);
  }
  void operator()(std::string_view name, double value) {
    if (!std::isfinite(value)) problems_.add("The number is not finite.", at(name));
  }
  template <int rows, int columns>
  void operator()(std::string_view name, const Eigen::Matrix<double, rows, columns>& value) {
    if (!value.allFinite()) problems_.add("One of the numbers is not finite.", at(name));
  }
  void operator()(std::string_view name, const std::string& text) {
    const std::size_t longest = name == "note" ? limits::kLongestNote : limits::kLongestName;
    if (text.size() > longest)
      problems_.add("The text has " + std::to_string(text.size()) + " bytes, but at most " +
                        std::to_string(longest) + " fit.",
                    at(name));
  }
  void operator()(std::string_view name, Id id) {
    if (name != "id") return;
    if (!id) return problems_.add("The thing has no id.", at(name));
    if (id.value > lastId_)
      problems_.add("The id " + std::to_string(id.value) + " is above the job's last id, " +
                        std::to_string(lastId_) + ".",
                    at(name));
    const auto [earlier, isNew] = seen_.emplace(id, at(name));
    if (!isNew)
      problems_.add(
          "The id " + std::to_string(id.value) + " is given twice, first at " + earlier->second + ".",
          at(name));
  }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view name, E value) {
    if (enumName(value).empty()) problems_.add("The choice is none of those there are.", at(name));
  }
  void operator()(std::string_view name, const BlobPtr& file) {
    if (file) (*this)(name, file->fileName);
  }
  // Nothing that could be wrong, or looked at by those who made them.
  void operator()(std::string_view, bool) {}
  void operator()(std::string_view, int) {}
  void operator()(std::string_view, char) {}
  void operator()(std::string_view, std::uint32_t) {}
  void operator()(std::string_view, const std::shared_ptr<const TriangleMesh>&) {}
  void operator()(std::string_view, const std::shared_ptr<const std::vector<Eigen::Vector3f>>&) {}

 private:
  /// One level deeper as long as it lives.
  struct Step {
    Step(ValueWalk& owner, std::string name) : walk(owner) { walk.path_.push_back(std::move(name)); }
    Step(const Step&) = delete;
    Step& operator=(const Step&) = delete;
    ~Step() { walk.path_.pop_back(); }
    ValueWalk& walk;
  };

  template <class T>
  static std::string elementName(const T& element, std::size_t index) {
    if constexpr (requires { element.name; })
      if (!element.name.empty()) return element.name;
    return std::to_string(index + 1);
  }

  std::string at(std::string_view name) const {
    std::string place;
    for (std::size_t i = 1; i < path_.size(); ++i) place += path_[i] + " / ";  // path_[0] is the job
    return place + std::string(name);
  }

  std::uint32_t lastId_;
  ProblemList problems_;
  std::vector<std::string> path_;
  std::map<Id, std::string> seen_;
};

}  // namespace

std::vector<Problem> checkValues(const Job& job) {
  ValueWalk walk(job);
  walk("job", job);
  return walk.take();
}

}  // namespace baywright::detail
