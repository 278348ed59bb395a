#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<Product> python_stubs() { return {}; }

}  // namespace cutwater::generate
