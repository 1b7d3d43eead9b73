#pragma once

// Only for core/scan/*.cpp: one spelling for ZXing 1.4 (Debian 12) and 2.x. No other file of core
// includes a ZXing header. ZX_USE_UTF8 makes text() a std::string in 1.4; later ones ignore it.
#ifndef ZX_USE_UTF8
#define ZX_USE_UTF8 1
#endif

#include <ZXing/BarcodeFormat.h>
#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>
#include <ZXing/ReadBarcode.h>
#if __has_include(<ZXing/Version.h>)
#include <ZXing/Version.h>
#else
#include <ZXing/ZXVersion.h>
#endif
#include <type_traits>
#include <utility>

namespace spile::scan::zxing {

#if __has_include(<ZXing/ReaderOptions.h>)
using Options = ZXing::ReaderOptions;  // from 2.2 on
#else
using Options = ZXing::DecodeHints;
#endif

using Barcode = std::decay_t<decltype(ZXing::ReadBarcode(std::declval<const ZXing::ImageView&>()))>;
using Barcodes =
    std::decay_t<decltype(ZXing::ReadBarcodes(std::declval<const ZXing::ImageView&>()))>;

/// Return options that give a symbol's text as it is, which is all that 1.4 knows.
[[nodiscard]] inline Options plainOptions()
{
    Options options;
#if ZXING_VERSION_MAJOR >= 2
    options.setTextMode(ZXing::TextMode::Plain);
#endif
    return options;
}

}  // namespace spile::scan::zxing
