// Writes every product below the folder named on the command line; files that would not change are left alone, so that
// nothing is built again for nothing.
#include "generate/product.hpp"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace {

namespace fs = std::filesystem;
using cutwater::generate::Product;

bool holds(const fs::path& path, const std::string& text)
{
    std::ifstream file(path, std::ios::binary);
    return file && std::string(std::istreambuf_iterator<char>(file), {}) == text;
}

bool write(const fs::path& path, const std::string& text)
{
    if (holds(path, text)) return true;
    fs::create_directories(path.parent_path());
    std::ofstream file(path, std::ios::binary);
    file << text;
    return static_cast<bool>(file.flush());
}

}  // namespace

int main(int argc, char** argv)
{
    using namespace cutwater::generate;
    if (argc != 2) {
        std::fputs("usage: cutwater-generate FOLDER\n", stderr);
        return 2;
    }
    const auto faults = faults_in_catalogue();
    for (const std::string& fault : faults) std::fprintf(stderr, "cutwater-generate: %s\n", fault.c_str());
    if (!faults.empty()) return 1;
    for (const Product& product : all_products())
        if (!write(fs::path(argv[1]) / product.path, product.text)) {
            std::fprintf(stderr, "cutwater-generate: cannot write %s\n", product.path.c_str());
            return 1;
        }
    return 0;
}
