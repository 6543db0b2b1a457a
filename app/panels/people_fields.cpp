// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>

#include "job/edit.h"
#include "job/find.h"
#include "panels/field_list.h"

namespace baywright {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("PeopleFields", text);
}

const Club* clubOf(const Job& job, Id id) {
  for (const Golfer& golfer : job.golfers) {
    if (const Club* club = findById(golfer.clubs, id)) return club;
  }
  return nullptr;
}

/// One taped reach of a golfer's swing; 0 takes it back, and the model decides again.
Field reachField(Id id, const QString& label, std::optional<Dimension> MeasuredReach::*which) {
  Field field;
  field.kind = PropertyKind::Measured;
  field.label = label;
  field.hint =
      tr("Let the golfer swing slowly and tape it; it overrides the model. Not measured: the model decides.");
  field.read = [id, which](const Job& job) -> FieldValue {
    const Golfer* golfer = findById(job.golfers, id);
    if (!golfer || !golfer->reach || !((*golfer->reach).*which)) return notMeasured(0);
    return *((*golfer->reach).*which);
  };
  field.write = [id, which](const Job& job, const FieldValue& value) -> Result<Job> {
    const Golfer* found = findById(job.golfers, id);
    if (!found) return fail("This golfer is gone.");
    Golfer golfer = *found;
    if (golfer.clubs.empty())
      return fail("The reach is measured with a club in hand.", golfer.name, "Add a club first.");
    if (!golfer.reach) golfer.reach = MeasuredReach{golfer.clubs.front().id, {}, {}};
    const Dimension& reach = std::get<Dimension>(value);
    (*golfer.reach).*which = reach.known ? std::optional(reach) : std::nullopt;
    if (!golfer.reach->highest && !golfer.reach->behind) golfer.reach.reset();
    return setGolfer(job, golfer);
  };
  return field;
}

std::vector<Field> golferFields(Id id) {
  std::vector<Field> fields =
      FieldList<Golfer>([id](const Job& job) { return findById(job.golfers, id); },
                        [](Job job, const Golfer& golfer) { return setGolfer(std::move(job), golfer); })
          .add(
              PropertyKind::Words, tr("Name"), [](Golfer & g) -> auto& { return g.name; })
          .choice(
              tr("Hand"), {tr("Right-handed"), tr("Left-handed")}, [](Golfer & g) -> auto& { return g.hand; })
          .add(
              PropertyKind::Measured, tr("Stature"), [](Golfer & g) -> auto& { return g.stature; },
              tr("In shoes."))
          .add(
              PropertyKind::Flag, tr("Swings here"), [](Golfer & g) -> auto& { return g.swings; },
              tr("Off: kept in the job but not checked."))
          .take();
  fields.push_back(reachField(id, tr("Highest point"), &MeasuredReach::highest));
  fields.back().group = tr("Measured swing, first club");
  fields.push_back(reachField(id, tr("Widest behind, from the ball"), &MeasuredReach::behind));
  return fields;
}

}  // namespace

std::vector<Field> peopleFields(const Job&, const Thing& thing) {
  const Id id = thing.id;
  if (thing.kind == ThingKind::Golfer) return golferFields(id);
  if (thing.kind == ThingKind::Club) {
    return FieldList<Club>([id](const Job& job) { return clubOf(job, id); },
                           [](Job job, const Club& club) { return setClub(std::move(job), club); })
        .add(
            PropertyKind::Words, tr("Name"), [](Club & club) -> auto& { return club.name; })
        .add(
            PropertyKind::Size, tr("Length"), [](Club & club) -> auto& { return club.length; })
        .add(
            PropertyKind::Angle, tr("Lie"), [](Club & club) -> auto& { return club.lie; },
            tr("Between shaft and ground at address."))
        .take();
  }
  return FieldList<Bystander>(
             [id](const Job& job) { return findById(job.bystanders, id); },
             [](Job job, const Bystander& person) { return setBystander(std::move(job), person); })
      .add(
          PropertyKind::Words, tr("Name"), [](Bystander & b) -> auto& { return b.name; })
      .add(
          PropertyKind::Length, tr("x"), [](Bystander & b) -> auto& { return b.position.x(); })
      .add(
          PropertyKind::Length, tr("y"), [](Bystander & b) -> auto& { return b.position.y(); })
      .add(
          PropertyKind::Size, tr("Radius"), [](Bystander & b) -> auto& { return b.radius; })
      .add(
          PropertyKind::Size, tr("Height"), [](Bystander & b) -> auto& { return b.height; })
      .take();
}

}  // namespace baywright
