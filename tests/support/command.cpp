#include "tests/support/command.hpp"

#include <array>
#include <cstdio>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace spile::support {

namespace {

// A file without a name that the child writes and the parent reads afterwards.
class Output {
public:
    Output() : file_(std::tmpfile()) {}
    ~Output() { std::fclose(file_); }
    Output(const Output&) = delete;
    Output& operator=(const Output&) = delete;

    [[nodiscard]] int descriptor() const { return fileno(file_); }
    [[nodiscard]] std::string text() const
    {
        std::rewind(file_);
        std::string all;
        std::array<char, 4096> piece{};
        for (std::size_t n = std::fread(piece.data(), 1, piece.size(), file_); n > 0;
             n = std::fread(piece.data(), 1, piece.size(), file_)) {
            all.append(piece.data(), n);
        }
        return all;
    }

private:
    std::FILE* file_;
};

}  // namespace

Ended run(const std::string& program, const std::vector<std::string>& arguments)
{
    const Output out;
    const Output err;
    std::vector<std::string> words = arguments;
    words.insert(words.begin(), program);
    std::vector<char*> argv;
    for (std::string& word : words) {
        argv.push_back(word.data());
    }
    argv.push_back(nullptr);
    const pid_t child = fork();
    if (child < 0) {
        throw std::runtime_error("fork failed");
    }
    if (child == 0) {
        dup2(out.descriptor(), STDOUT_FILENO);
        dup2(err.descriptor(), STDERR_FILENO);
        execvp(program.c_str(), argv.data());
        _exit(127);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, out.text(), err.text()};
}

}  // namespace spile::support
