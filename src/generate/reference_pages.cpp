#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<Product> reference_pages() { return {}; }

}  // namespace cutwater::generate
