# Writes the bytes of the file FROM as a C++ array NAME into TO.
file(READ ${FROM} hex HEX)
string(REGEX REPLACE "(..)" "0x\\1," bytes "${hex}")
file(WRITE ${TO} "#include \"core/labels/built_in_fonts.hpp\"\n"
  "namespace spile::labels {\n"
  "static constexpr std::uint8_t ${NAME}Bytes[] = {${bytes}};\n"
  "const ByteView ${NAME}(${NAME}Bytes);\n"
  "}\n")
