#pragma once

#include "core/base/result.hpp"

#include <QtDebug>

namespace spile::support {

/// The value of `result`; a test that cannot go on without it ends here.
template <class T>
T must(Result<T> result)
{
    if (!result) {
        qFatal("%s: %s", result.error().subject.c_str(), result.error().value.c_str());
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

}  // namespace spile::support
