// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QApplication>
#include <QStandardPaths>

#ifdef __SANITIZE_ADDRESS__
// What the toolkit and the fonts keep until the end is not ours to free.
extern "C" const char* __asan_default_options() {
  return "detect_leaks=0";
}
#endif

int main(int argc, char** argv) {
  qputenv("QT3D_RENDERER", "opengl");
  ::testing::InitGoogleTest(&argc, argv);
  QStandardPaths::setTestModeEnabled(true);
  // Listing the tests must work where there is no display.
  if (::testing::GTEST_FLAG(list_tests)) return RUN_ALL_TESTS();
  QApplication application(argc, argv);
  QApplication::setStyle(QStringLiteral("Fusion"));
  return RUN_ALL_TESTS();
}
