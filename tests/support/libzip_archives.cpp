#include "tests/support/libzip_archives.hpp"

#include <gtest/gtest.h>
#include <zip.h>

namespace spile::support {

static std::pair<std::string, std::string> readMember(zip_t* zip, zip_uint64_t index, bool packed)
{
    zip_stat_t status;
    EXPECT_EQ(zip_stat_index(zip, index, 0, &status), 0);
    EXPECT_EQ(status.comp_method, packed ? ZIP_CM_DEFLATE : ZIP_CM_STORE);
    std::string text(status.size, '\0');
    zip_file_t* file = zip_fopen_index(zip, index, 0);
    EXPECT_EQ(zip_fread(file, text.data(), text.size()), static_cast<zip_int64_t>(text.size()));
    char beyond = 0;
    EXPECT_EQ(zip_fread(file, &beyond, 1), 0);  // libzip reports a wrong checksum only here
    zip_fclose(file);
    return {status.name, text};
}

ZipContents libzipContents(ByteView archive, bool packed)
{
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* source = zip_source_buffer_create(archive.data(), archive.size(), 0, &error);
    zip_t* zip = zip_open_from_source(source, ZIP_RDONLY | ZIP_CHECKCONS, &error);
    if (zip == nullptr) {
        ADD_FAILURE() << zip_error_strerror(&error);
        zip_source_free(source);
        return {};
    }
    ZipContents contents;
    const auto count = static_cast<zip_uint64_t>(zip_get_num_entries(zip, 0));
    for (zip_uint64_t i = 0; i < count; ++i) {
        contents.push_back(readMember(zip, i, packed));
    }
    zip_discard(zip);
    return contents;
}

static void add(zip_t* zip, const std::string& name, const std::string& text,
                const LibzipOptions& options)
{
    zip_source_t* source = zip_source_buffer(zip, text.data(), text.size(), 0);
    const zip_int64_t added = zip_file_add(zip, name.c_str(), source, 0);
    ASSERT_GE(added, 0) << zip_strerror(zip);
    const auto index = static_cast<zip_uint64_t>(added);
    zip_set_file_compression(zip, index, options.deflate ? ZIP_CM_DEFLATE : ZIP_CM_STORE, 9);
    zip_file_set_external_attributes(zip, index, 0, ZIP_OPSYS_UNIX, options.unixMode << 16U);
    if (options.encrypt) {
        ASSERT_EQ(zip_file_set_encryption(zip, index, ZIP_EM_TRAD_PKWARE, "secret"), 0);
    }
}

Bytes libzipArchive(const ZipContents& contents, const LibzipOptions& options)
{
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* target = zip_source_buffer_create(nullptr, 0, 0, &error);
    zip_source_keep(target);
    zip_t* zip = zip_open_from_source(target, ZIP_TRUNCATE, &error);
    for (const auto& [name, text] : contents) {
        add(zip, name, text, options);
    }
    zip_set_archive_comment(zip, options.comment,
                            static_cast<zip_uint16_t>(std::string_view(options.comment).size()));
    EXPECT_EQ(zip_close(zip), 0) << zip_strerror(zip);

    zip_stat_t status;
    zip_source_stat(target, &status);
    Bytes archive(status.size);
    zip_source_open(target);
    EXPECT_EQ(zip_source_read(target, archive.data(), archive.size()),
              static_cast<zip_int64_t>(archive.size()));
    zip_source_close(target);
    zip_source_free(target);
    return archive;
}

}  // namespace spile::support
