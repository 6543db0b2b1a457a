// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "editing/document.h"
#include "survey/recognised_room.h"

namespace baywright {

/// What a person corrects in a room before it is taken: a document of its own, so that the usual fields work
/// on it. Parts keep their order and number.
class RoomCorrections {
 public:
  explicit RoomCorrections(const UnitSystem& units) : units_(units) {}

  /// Begins anew. A proposal that is no valid room cannot be corrected here: the document has no walls then.
  void start(RecognisedRoom proposal);
  Document& document() { return document_; }
  const Room& room() const { return document_.job().room; }
  /// The proposal with the corrected figures and its own ids.
  Room applied(Room proposal) const;

 private:
  UnitSystem units_;
  Document document_;
};

}  // namespace baywright
