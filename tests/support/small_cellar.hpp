#pragma once

#include "core/cellar/acts/registering.hpp"
#include "tests/support/test_device.hpp"

#include <string>

/// What tests of ledger and cellar do again and again.
namespace spile::support {

struct SmallCellar {
    SubjectId person, batch, barrel;
    std::string code;
};

/// Register a person, a batch and a barrel of 200 L that holds 190 L of the batch.
[[nodiscard]] SmallCellar fillSmallCellar(cellar::Cellar& cellar);

/// Return a PNG file of one colour; another `shade`, other bytes.
[[nodiscard]] Bytes smallPicture(std::uint8_t shade = 90);

/// Return the SHA-256 over what must not change: ledger.db, its -wal and all under photos/.
[[nodiscard]] Sha256 storedBytes(const Path& cellarFolder);

/// Return all files under `folder` by their path from there, sorted.
[[nodiscard]] std::vector<std::string> filesUnder(const Path& folder);

/// Return what check() finds wrong with the cellar, a line each; empty if it is sound.
[[nodiscard]] std::string problemsOf(cellar::Cellar& cellar);

/// Return how many records count.
[[nodiscard]] std::int64_t entryCount(cellar::Cellar& cellar);

/// Return "subject: value (limit)", for messages of failed expectations.
[[nodiscard]] std::string textOf(const Error& error);

/// Admit the device of `other` at `desk`, as a phone if not said otherwise.
void admitDevice(cellar::Cellar& desk, cellar::Cellar& other,
                 ledger::DeviceRole role = ledger::DeviceRole::Phone);

/// Hand a day file out of `from` and take it in at `to`.
ledger::TakenIn carry(cellar::Cellar& from, cellar::Cellar& to, const Path& file);

}  // namespace spile::support
