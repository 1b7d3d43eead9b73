// spile_texts FOLDER FILE: writes the texts of core and of the work sheets in FOLDER for lupdate.
#include "platform/app/core_texts.hpp"

#include <fstream>
#include <iostream>

int main(int argc, char** argv)
{
    if (argc != 3) {
        std::cerr << "spile_texts FOLDER FILE\n";
        return 2;
    }
    const auto texts = spile::app::coreTexts(argv[1]);
    if (!texts) {
        std::cerr << texts.error().value << ": " << texts.error().limit << '\n';
        return 3;
    }
    std::ofstream out(argv[2], std::ios::binary);
    out << *texts;
    return out.flush() ? 0 : 3;
}
