// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDialog>
#include <map>
#include <optional>
#include <vector>

#include "exchange/scan_import.h"
#include "survey/scan_suggest.h"
#include "units/unit_system.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace baywright {

class ScanPreview;

/// What can be told of a scan before anybody has said its unit and which way is up.
struct ScanFacts {
  std::size_t points = 0;
  std::size_t triangles = 0;  ///< 0: a cloud
  std::optional<UpAxis> statedUp;
  std::optional<double> statedMetresPerUnit;
  std::vector<UpSuggestion> ups;  ///< the likeliest first
  std::map<UpAxis, std::vector<UnitSuggestion>> units;
  std::vector<Eigen::Vector3f> glance;  ///< glanceSamples()
};

/// Takes a while for a large scan.
ScanFacts factsOf(const ScanGeometry& scan);

/// Asks for the unit of a scan and which of its axes points up, and shows how it would stand. What the file
/// states or what is likely is chosen beforehand, with the reason below it; where nothing is, the person has
/// to choose.
class ScanDialog : public QDialog {
  Q_OBJECT

 public:
  ScanDialog(ScanFacts facts, const UnitSystem& units, const QString& fileName, QWidget* parent = nullptr);

  ScanChoices choices() const;
  /// Why the last choices gave no room.
  void showProblem(const Problem& problem);

 private:
  void fillUps();
  /// The first axis along which, in some unit, a room could be as high; -1: none.
  int likeliestUp() const;
  void suggestUnit();
  void explain();
  void preview();
  const UnitSuggestion* suggestionFor(DrawingUnit unit) const;

  ScanFacts facts_;
  ScanPreview* preview_;
  QComboBox* up_;
  QComboBox* unit_;
  QLabel* whyUp_;
  QLabel* whyUnit_;
  QLabel* problem_;
  QPushButton* next_;
  bool unitChosen_ = false;  // by the person: it stays when another axis is chosen
};

}  // namespace baywright
