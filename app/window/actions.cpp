// SPDX-License-Identifier: Apache-2.0
#include "window/actions.h"

#include <QCoreApplication>

#include "drawing/views.h"
#include "window/main_window.h"
#include "window/originals_out.h"

namespace baywright {

#define TEXT(words) QT_TRANSLATE_NOOP("Action", words)

const std::vector<ActionRow>& actionRows() {
  static const std::vector<ActionRow> rows = {
      {"new", MenuPlace::File, TEXT("&New"), "new", QKeySequence::New, TEXT("Starts an empty job."),
       [](MainWindow& w) { w.files().newDocument(); }},
      {"open", MenuPlace::File, TEXT("&Open…"), "open", QKeySequence::Open,
       TEXT("Opens a job, a plan, a drawing, a scan or a measuring list."),
       [](MainWindow& w) { w.files().open(); }},
      {"save", MenuPlace::File, TEXT("&Save"), "save", QKeySequence::Save, TEXT("Saves the job."),
       [](MainWindow& w) { w.files().save(); }, true},
      {"saveAs", MenuPlace::File, TEXT("Save &as…"), "", QKeySequence::SaveAs,
       TEXT("Saves the job under another name."), [](MainWindow& w) { w.files().saveAs(); }},
      {"revert",
       MenuPlace::File,
       TEXT("Re&vert"),
       "",
       {},
       TEXT("Goes back to the job as it was last saved."),
       [](MainWindow& w) { w.files().revert(); }},
      {"importPlan", MenuPlace::File, TEXT("Open a &plan…"), "plan", QKeySequence(Qt::CTRL | Qt::Key_I),
       TEXT("Lays a scanned plan (picture or PDF) under the drawing."),
       [](MainWindow& w) { w.files().importPlan(); }, true},
      {"importSurvey", MenuPlace::File, TEXT("Import a &drawing or scan…"), "",
       QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I),
       TEXT("Takes the room from a drawing (DXF), a 3D scan or a measuring list."),
       [](MainWindow& w) { w.files().importSurvey(); }},
      {"saveOriginals",
       MenuPlace::File,
       TEXT("Sa&ve originals…"),
       "",
       {},
       TEXT("Writes the drawings, lists, scans and plans that the job keeps into a folder, as they came."),
       [](MainWindow& w) { saveOriginalsOut(w.document(), &w); }},
      {"print", MenuPlace::File, TEXT("P&rint…"), "print", QKeySequence::Print,
       TEXT("Prints the plan true to scale."), [](MainWindow& w) { w.print(); }, true},
      {"measuringList",
       MenuPlace::File,
       TEXT("&Measuring list…"),
       "",
       {},
       TEXT("Shows what is still to be measured, with the room's sketch, for print."),
       [](MainWindow& w) { w.showMeasuringList(); }},
      {"quit", MenuPlace::File, TEXT("&Quit"), "", QKeySequence::Quit, TEXT("Ends the program."),
       [](MainWindow& w) { w.close(); }, true},
      {"paste", MenuPlace::Edit, TEXT("&Paste a plan"), "", QKeySequence::Paste,
       TEXT("Lays the picture on the clipboard under the drawing."),
       [](MainWindow& w) { w.files().pastePlan(); }, true},
      {"remove",
       MenuPlace::Edit,
       TEXT("&Remove"),
       "delete",
       {},
       TEXT("Takes what is selected out of the job."),
       [](MainWindow& w) { w.removeSelected(); }},
      {"fit", MenuPlace::View, TEXT("&Fit all"), "fit", QKeySequence(Qt::CTRL | Qt::Key_0),
       TEXT("Shows everything in every view."), [](MainWindow& w) { w.fitAll(); }},
      {"fromGolfer",
       MenuPlace::View,
       TEXT("3D from the &golfer"),
       "",
       {},
       TEXT("Looks down-range from behind the golfer."),
       [](MainWindow& w) { w.lookFrom(SceneView::Standpoint::Golfer); },
       true},
      {"fromAbove",
       MenuPlace::View,
       TEXT("3D from &above"),
       "",
       {},
       TEXT("Looks straight down."),
       [](MainWindow& w) { w.lookFrom(SceneView::Standpoint::Above); }},
      {"fromProjector",
       MenuPlace::View,
       TEXT("3D from the &projector"),
       "",
       {},
       TEXT("Looks as the lens does."),
       [](MainWindow& w) { w.lookFrom(SceneView::Standpoint::Projector); }},
      {"fromCorner",
       MenuPlace::View,
       TEXT("3D from a &corner"),
       "",
       {},
       TEXT("Looks into the whole room."),
       [](MainWindow& w) { w.lookFrom(SceneView::Standpoint::Corner); }},
      {"help", MenuPlace::Help, TEXT("&Help"), "help", QKeySequence::HelpContents,
       TEXT("What the checks ask and assume."), [](MainWindow& w) { w.showHelp(); }},
      {"about",
       MenuPlace::Help,
       TEXT("&About Baywright"),
       "",
       {},
       TEXT("Version, licence and caution."),
       [](MainWindow& w) { w.showAbout(); }},
  };
  return rows;
}

const std::vector<ZoneRow>& zoneRows() {
  static const std::vector<ZoneRow> rows = {
      {"zoneSwing", TEXT("&Swings"), [](ViewOptions& o) { return &o.swing; }},
      {"zoneBound", TEXT("Full e&xtension"), [](ViewOptions& o) { return &o.swingBound; }},
      {"zoneBeam", TEXT("&Beam"), [](ViewOptions& o) { return &o.beam; }},
      {"zoneCapture", TEXT("Shots &caught"), [](ViewOptions& o) { return &o.capture; }},
      {"zoneRebound", TEXT("&Rebound and danger"), [](ViewOptions& o) { return &o.rebound; }},
      {"zoneWays", TEXT("&Ways out"), [](ViewOptions& o) { return &o.ways; }},
      {"zoneCorners", TEXT("How sure c&orners are"), [](ViewOptions& o) { return &o.corners; }},
      {"zoneDimensions", TEXT("&Dimensions"), [](ViewOptions& o) { return &o.dimensions; }},
      {"zoneLabels", TEXT("&Labels"), [](ViewOptions& o) { return &o.labels; }},
  };
  return rows;
}

#undef TEXT

QString actionText(const char* english) {
  return QCoreApplication::translate("Action", english);
}

}  // namespace baywright
