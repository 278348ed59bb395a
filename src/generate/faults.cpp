#include "generate/product.hpp"

namespace cutwater::generate {

std::vector<std::string> faults_in_catalogue() { return {}; }

}  // namespace cutwater::generate
