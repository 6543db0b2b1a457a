// SPDX-License-Identifier: Apache-2.0
#include <QBuffer>
#include <QImage>
#include <charconv>
#include <filesystem>
#include <ostream>
#include <set>

#include "clearance/assess.h"
#include "cli/command.h"
#include "drawing/scene_pick.h"
#include "drawing/views.h"
#include "job/thing_lookup.h"
#include "jobfile/atomic_file.h"
#include "jobfile/job_archive.h"
#include "painting/view_image.h"
#include "rendering/gl_probe.h"
#include "rendering/scene_renderer.h"

namespace baywright {
namespace {

struct NamedView {
  std::string_view name;
  ViewKind kind;
};
constexpr NamedView kViews[] = {{"plan", ViewKind::Plan},
                                {"down-range", ViewKind::DownRange},
                                {"side", ViewKind::Side},
                                {"screen", ViewKind::ScreenFace}};

/// A name as part of a file's: ASCII letters and digits, else a hyphen.
std::string fileName(std::string name) {
  for (char& c : name) {
    const bool isPlain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z');
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
    else if (!isPlain)
      c = '-';
  }
  return name;
}

Result<int> widthOf(const Arguments& arguments) {
  const auto text = arguments.value("--width");
  if (!text) return 1600;
  int width = 0;
  const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), width);
  if (error != std::errc() || end != text->data() + text->size() || width < 200 || width > 8000) {
    return fail("--width takes a whole number from 200 to 8000, not '" + *text + "'.");
  }
  return width;
}

Result<void> savePng(const QImage& image, const std::filesystem::path& file) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "PNG")) return fail("The picture could not be made.", file.string());
  return writeFileAtomically(file, std::string_view(bytes.data(), static_cast<std::size_t>(bytes.size())));
}

QImage sceneImage(const Job& job, const Assessment& assessment, QSize size) {
  const std::vector<SceneSolid> solids = sceneSolids(job, assessment, {});
  SceneRenderer renderer;
  renderer.setSize(size);
  renderer.setSmooth(true);
  renderer.setSolids(solids, {});
  OrbitCamera camera;
  camera.yaw = static_cast<float>(job.option().placement.bay.heading * 180 / kPi) - 30;
  camera.fit(sceneBounds(solids), size);
  camera.distance *= 0.75F;  // the ball around a room is larger than what is seen of it
  renderer.setCamera(camera);
  return renderer.settledImage();
}

}  // namespace

int runRender(const Arguments& arguments, const CommandOutput& output) {
  const Result<Job> job = loadJob(arguments.word(0));
  if (!job) return refuse(output, job.error());
  const Result<int> width = widthOf(arguments);
  if (!width) return refuse(output, width.error());
  const QSize size(*width, *width * 2 / 3);

  const std::filesystem::path folder = *arguments.value("--out");
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error)
    return refuse(output, {"The folder could not be made: " + error.message() + ".", folder.string(), {}});
  const std::string stem = std::filesystem::path(arguments.word(0)).stem().string();
  const auto write = [&](std::string_view name, const QImage& image) {
    const std::filesystem::path file = folder / (stem + "-" + std::string(name) + ".png");
    Result<void> written = savePng(image, file);
    if (written) output.out << file.string() << "\n";
    return written;
  };

  const Assessment assessment = assess(*job);
  for (const NamedView& view : kViews) {
    const Linework linework = viewLinework(view.kind, *job, assessment, {});
    if (const Result<void> written = write(view.name, viewImage(linework, size, Theme::light())); !written) {
      return refuse(output, written.error());
    }
  }
  std::set<std::string> names;
  for (const Wall& wall : job->room.walls) {
    std::string name = fileName(nameOf(*job, wall.id));
    while (!names.insert(name).second) name += "-again";
    const Linework linework = viewLinework({ViewKind::Wall, wall.id}, *job, assessment, {});
    const Result<void> written = write(name, viewImage(linework, size, Theme::light()));
    if (!written) return refuse(output, written.error());
  }
  const GlInfo gl = probeGl();
  const QImage scene = gl.usable ? sceneImage(*job, assessment, size) : QImage();
  if (scene.isNull()) {
    output.err << "baywright: The 3D picture is missing: "
               << (gl.usable ? "it could not be drawn in time." : gl.reason.toStdString())
               << " On a machine without a display run the command under xvfb-run.\n";
    return kDoneInPart;
  }
  if (const Result<void> written = write("3d", scene); !written) return refuse(output, written.error());
  return kDone;
}

}  // namespace baywright
