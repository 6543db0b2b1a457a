// SPDX-License-Identifier: Apache-2.0
#include "rendering/gl_probe.h"

#include <QCoreApplication>
#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFunctions>

namespace baywright {
namespace {

QString words(const char* text) {
  return QCoreApplication::translate("GlProbe", text);
}

}  // namespace

GlInfo probeGl() {
  GlInfo info;
  if (qEnvironmentVariableIsSet("BAYWRIGHT_NO_3D")) {
    info.reason = words("3D is switched off by BAYWRIGHT_NO_3D.");
    return info;
  }
  QSurfaceFormat wanted;
  wanted.setVersion(3, 3);
  wanted.setProfile(QSurfaceFormat::CoreProfile);
  wanted.setDepthBufferSize(24);
  QOpenGLContext context;
  context.setFormat(wanted);
  if (!context.create()) {
    info.reason = words("This machine offers no OpenGL.");
    return info;
  }
  QOffscreenSurface surface;
  surface.setFormat(context.format());
  surface.create();
  if (!surface.isValid() || !context.makeCurrent(&surface)) {
    info.reason = words("OpenGL is there but could not be started.");
    return info;
  }
  info.renderer =
      QString::fromLatin1(reinterpret_cast<const char*>(context.functions()->glGetString(GL_RENDERER)));
  context.doneCurrent();
  info.software =
      info.renderer.contains(QLatin1String("llvmpipe")) || info.renderer.contains(QLatin1String("softpipe"));
  info.usable = context.format().version() >= qMakePair(3, 3);
  if (!info.usable) info.reason = words("OpenGL is older than version 3.3.");
  return info;
}

}  // namespace baywright
