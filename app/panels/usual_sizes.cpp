// SPDX-License-Identifier: Apache-2.0
#include "panels/usual_sizes.h"

#include <QCoreApplication>
#include <QMenu>

namespace baywright {
namespace {

template <class Kind>
struct Group {
  Kind kind;
  const char* name;
};
constexpr Group<OpeningKind> kOpenings[] = {
    {OpeningKind::HingedDoor, QT_TRANSLATE_NOOP("UsualSizes", "Doors")},
    {OpeningKind::SectionalDoor, QT_TRANSLATE_NOOP("UsualSizes", "Garage doors")},
    {OpeningKind::Window, QT_TRANSLATE_NOOP("UsualSizes", "Windows")},
    {OpeningKind::Passage, QT_TRANSLATE_NOOP("UsualSizes", "Passages, sliding and folding doors")}};
constexpr Group<FixtureKind> kFixtures[] = {
    {FixtureKind::Shelving, QT_TRANSLATE_NOOP("UsualSizes", "Shelving")},
    {FixtureKind::Beam, QT_TRANSLATE_NOOP("UsualSizes", "Beams")},
    {FixtureKind::Duct, QT_TRANSLATE_NOOP("UsualSizes", "Ducts and pipes")},
    {FixtureKind::Light, QT_TRANSLATE_NOOP("UsualSizes", "Lights")},
    {FixtureKind::Fan, QT_TRANSLATE_NOOP("UsualSizes", "Fans")},
    {FixtureKind::Column, QT_TRANSLATE_NOOP("UsualSizes", "Columns")},
    {FixtureKind::Opener, QT_TRANSLATE_NOOP("UsualSizes", "Door openers")},
    {FixtureKind::Furniture, QT_TRANSLATE_NOOP("UsualSizes", "Furniture")},
    {FixtureKind::PowerOutlet, QT_TRANSLATE_NOOP("UsualSizes", "Power outlets")},
    {FixtureKind::DataOutlet, QT_TRANSLATE_NOOP("UsualSizes", "Data outlets")},
    {FixtureKind::Other, QT_TRANSLATE_NOOP("UsualSizes", "Other things")}};

template <class Thing, class Groups>
void addGroups(QMenu& menu, const std::vector<Thing>& usual, const Groups& groups,
               const std::function<void(const Thing&)>& pick, const std::function<bool(const Thing&)>& fits) {
  for (const auto& group : groups) {
    std::vector<const Thing*> members;
    for (const Thing& each : usual) {
      if (each.kind == group.kind && (!fits || fits(each))) members.push_back(&each);
    }
    QMenu* into = &menu;
    if (members.size() > 1) into = menu.addMenu(QCoreApplication::translate("UsualSizes", group.name));
    for (const Thing* each : members) {
      into->addAction(QString::fromStdString(each->name), &menu, [pick, thing = *each] { pick(thing); });
    }
  }
}

}  // namespace

void addUsualOpenings(QMenu& menu, const Catalogue& catalogue, std::function<void(const Opening&)> pick) {
  addGroups<Opening>(menu, catalogue.openings, kOpenings, pick, {});
}

void addUsualFixtures(QMenu& menu, const Catalogue& catalogue, std::function<void(const Fixture&)> pick,
                      const std::function<bool(const Fixture&)>& fits) {
  addGroups<Fixture>(menu, catalogue.fixtures, kFixtures, pick, fits);
}

}  // namespace baywright
