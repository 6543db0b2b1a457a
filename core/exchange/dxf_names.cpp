// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_names.h"

#include <array>
#include <span>

#include "units/utf8.h"

namespace baywright::detail {

namespace {

// English, German, French, Spanish, Italian, Portuguese, Dutch, Danish and Norwegian, Swedish, Finnish,
// Polish, Czech, Hungarian, Turkish, Russian, Greek, Chinese, Japanese, Korean: words from memory.
constexpr std::string_view kWallWords[] = {
    "wall",   "wand",      "wände",   "waende",  "mauer",   "mur",   "muro",   "pared", "paret",
    "parede", "muur",      "vegg",    "væg",     "vägg",    "seinä", "ścian",  "scian", "stěn",
    "zdi",    "zed",       "fal",     "duvar",   "стен",    "τοίχ",  "墙",     "牆",    "壁",
    "벽",     "partition", "cloison", "tabique", "tramezz", "brick", "masonry"};
// "Load-bearing" holds the word for a door in French, Italian, Spanish and Portuguese: murs porteurs.
constexpr std::string_view kBearingWords[] = {"porteu", "portant", "portador"};
constexpr std::string_view kDoorWords[] = {"door", "tür",  "tuer", "porte", "puerta", "porta", "deur",
                                           "dør",  "dörr", "ovi",  "drzwi", "dveř",   "ajtó",  "kapı",
                                           "двер", "πόρτ", "门",   "門",    "ドア",   "문"};
constexpr std::string_view kWindowWords[] = {
    "window", "glaz",    "fenster", "fenêtre", "fenetre", "ventana", "finestra", "janela",
    "raam",   "ramen",   "vindu",   "vindue",  "fönster", "ikkuna",  "okno",     "okna",
    "ablak",  "pencere", "окн",     "παράθυρ", "窗",      "창"};
constexpr std::string_view kOtherWords[] = {
    "text",      "anno",     "note",    "dim",     "maß",   "masse",    "bemass",    "cota",      "cote",
    "hatch",     "patt",     "schraff", "hachure", "frame", "border",   "rahmen",    "cartouche", "title",
    "plankopf",  "grid",     "axis",    "achse",   "axe",   "furn",     "möbel",     "moebel",    "mobil",
    "defpoints", "viewport", "vport",   "elec",    "elekt", "sanit",    "plumb",     "legend",    "symbol",
    "logo",      "roof",     "dach",    "site",    "plot",  "property", "grundstück"};

char32_t lower(char32_t c) {
  if (c >= U'A' && c <= U'Z') return c + 32;
  if (c >= 0xC0 && c <= 0xDE && c != 0xD7) return c + 32;                       // À to Þ
  if ((c >= 0x100 && c <= 0x137) || (c >= 0x14A && c <= 0x177)) return c | 1u;  // Ā to Ķ, Ŋ to Ŷ
  if ((c >= 0x139 && c <= 0x147) || (c >= 0x179 && c <= 0x17D)) return c + c % 2;
  if (c >= 0x391 && c <= 0x3A9) return c + 32;  // Greek
  if (c == 0x38A) return 0x3AF;                 // Ί
  if (c == 0x386) return 0x3AC;                 // Ά
  if (c == 0x38C) return 0x3CC;                 // Ό
  if (c >= 0x410 && c <= 0x42F) return c + 32;  // Cyrillic
  return c;
}

void append(std::string& text, char32_t code) {
  const auto put = [&](char32_t byte) { text += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (code < 0x80) {
    put(code);
  } else if (code < 0x800) {
    put(0xC0 | (code >> 6));
    put(0x80 | (code & 0x3F));
  } else {
    put(0xE0 | (code >> 12));
    put(0x80 | ((code >> 6) & 0x3F));
    put(0x80 | (code & 0x3F));
  }
}

std::optional<std::string_view> firstIn(const std::string& name, std::span<const std::string_view> words) {
  for (const std::string_view word : words)
    if (name.find(word) != std::string::npos) return word;
  return std::nullopt;
}

std::string without(std::string name, std::span<const std::string_view> words) {
  for (const std::string_view word : words)
    if (const auto at = name.find(word); at != std::string::npos) name.erase(at, word.size());
  return name;
}

}  // namespace

std::string foldedName(std::string_view utf8) {
  std::string folded;
  while (!utf8.empty()) {
    const auto point = firstCodePoint(utf8);
    const std::size_t bytes = point ? point->bytes : 1;
    if (point && point->code < 0x10000)
      append(folded, lower(point->code));
    else
      folded += utf8.substr(0, bytes);
    utf8.remove_prefix(bytes);
  }
  return folded;
}

std::optional<HintedName> hintOf(std::string_view name) {
  const std::string folded = without(foldedName(name), kBearingWords);
  if (const auto word = firstIn(folded, kOtherWords)) return HintedName{NameHint::NotBuilt, *word};
  if (const auto word = firstIn(folded, kDoorWords)) return HintedName{NameHint::Door, *word};
  if (const auto word = firstIn(folded, kWindowWords)) return HintedName{NameHint::Window, *word};
  if (const auto word = firstIn(folded, kWallWords)) return HintedName{NameHint::Wall, *word};
  return std::nullopt;
}

bool namesWalls(std::string_view name) {
  return firstIn(without(foldedName(name), kBearingWords), kWallWords).has_value();
}

}  // namespace baywright::detail
