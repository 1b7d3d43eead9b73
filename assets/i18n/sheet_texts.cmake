# Writes the words of the work sheets as C++ that lupdate reads. They are data, so nothing else shows them to it:
#   cmake -DSHEETS=assets/sheets -DOUT=assets/i18n/sheet_texts.cpp -P assets/i18n/sheet_texts.cmake
cmake_minimum_required(VERSION 3.25)

set(texts "")
file(GLOB files "${SHEETS}/*.sheet" "${SHEETS}/*.txt")
list(SORT files)
foreach(file IN LISTS files)
  file(READ "${file}" content)
  string(REPLACE ";" "\\;" content "${content}") # semicolons would part a list
  string(REPLACE "\n" ";" lines "${content}")
  foreach(line IN LISTS lines)
    set(text "")
    if(line MATCHES "^#" OR line STREQUAL "")
      continue()
    elseif(line MATCHES "^tick: [a-z0-9_]+ \\| (.+)$")
      set(text "${CMAKE_MATCH_1}")
    elseif(line MATCHES "^(title|say|hint|close): (.+)$")
      set(text "${CMAKE_MATCH_2}")
    elseif(file MATCHES "\\.txt$" AND line MATCHES "^[a-z0-9_]+ \\| ([^|]+[^| ])( \\|.*)?$")
      set(text "${CMAKE_MATCH_1}")
    endif()
    if(text)
      string(REPLACE "\"" "\\\"" text "${text}")
      string(APPEND texts "    QT_TRANSLATE_NOOP(\"Sheets\", \"${text}\"),\n")
    endif()
  endforeach()
endforeach()
file(CONFIGURE OUTPUT "${OUT}" CONTENT "// Made by sheet_texts.cmake from assets/sheets; for lupdate alone, never compiled.
const char* const texts[] = {
@texts@};
" @ONLY)
