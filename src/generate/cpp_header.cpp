#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<Product> cpp_header() { return {}; }

}  // namespace cutwater::generate
