// The component that LibreOffice loads: org.cutwater.Calc, for cells and for Basic alike.
#include <calc/functions.hpp>

#include <com/sun/star/uno/XComponentContext.hpp>
#include <cppuhelper/supportsservice.hxx>

namespace cutwater::calc {
namespace {

class Component final : public Functions {
public:
    rtl::OUString SAL_CALL getImplementationName() override { return "org.cutwater.Calc.implementation"; }
    sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override { return cppu::supportsService(this, name); }
    com::sun::star::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override
    {
        // Not com.sun.star.sheet.AddIn: Calc would then ignore CalcAddIns.xcu.
        const rtl::OUString name("org.cutwater.Calc");
        return {&name, 1};
    }
};

}  // namespace
}  // namespace cutwater::calc

extern "C" SAL_DLLPUBLIC_EXPORT com::sun::star::uno::XInterface* cutwater_calc_create(
    com::sun::star::uno::XComponentContext*, const com::sun::star::uno::Sequence<com::sun::star::uno::Any>&)
{
    return cppu::acquire(static_cast<cppu::OWeakObject*>(new cutwater::calc::Component));
}
