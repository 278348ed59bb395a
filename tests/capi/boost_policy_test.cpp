// Boost.Math throws by default: an exception from a formula on another thread, or on its way through C, would end the
// host.
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <catch2/catch.hpp>

#include <cmath>

TEST_CASE("what Boost.Math cannot compute is no number and no exception", "[capi]")
{
    CHECK(std::isnan(boost::math::erf_inv(2.0)));            // domain
    CHECK_FALSE(std::isfinite(boost::math::tgamma(-1.0)));   // pole
    CHECK_FALSE(std::isfinite(boost::math::tgamma(500.0)));  // overflow
    CHECK(std::isnan(boost::math::quantile(boost::math::students_t_distribution<double>(-1), 0.975)));
    std::uintmax_t most = 50;
    const auto same_sign = [](double x) { return x * x + 1; };
    const auto [low, high] = boost::math::tools::toms748_solve(same_sign, -1.0, 1.0,
                                                               boost::math::tools::eps_tolerance<double>(50), most);
    CHECK((std::isnan(low) || std::isnan(high)));  // evaluation: no change of sign
}
