// SPDX-License-Identifier: Apache-2.0
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdio>

#include "jobfile/atomic_file.h"

namespace baywright {

int FileCalls::create(const char* path, mode_t mode) {
  return ::open(path, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
}

int FileCalls::openDirectory(const char* path) {
  return ::open(path, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
}

ssize_t FileCalls::write(int file, const char* bytes, std::size_t count) {
  return ::write(file, bytes, count);
}

int FileCalls::setMode(int file, mode_t mode) {
  return ::fchmod(file, mode);
}

int FileCalls::sync(int file) {
  return ::fsync(file);
}

int FileCalls::close(int file) {
  return ::close(file);
}

int FileCalls::rename(const char* from, const char* to) {
  return std::rename(from, to);
}

int FileCalls::remove(const char* path) {
  return ::unlink(path);
}

}  // namespace baywright
