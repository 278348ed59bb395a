#include "generate/product.hpp"

#include "catalogue/prose.hpp"

namespace cutwater::generate {
namespace {

std::vector<Maker>& makers()
{
    static std::vector<Maker> list;
    return list;
}

}  // namespace

Registered::Registered(Maker maker) { makers().push_back(maker); }

std::vector<Product> all_products()
{
    std::vector<Product> products;
    for (const Maker make : makers())
        for (Product& product : make()) products.push_back(std::move(product));
    return products;
}

std::vector<std::string> wrap(std::string_view text, std::size_t width)
{
    std::vector<std::string> lines(1);
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::string_view word = text.substr(0, end);
        if (!lines.back().empty() && lines.back().size() + 1 + word.size() > width) lines.emplace_back();
        if (!lines.back().empty()) lines.back() += ' ';
        lines.back() += word;
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

std::string permitted_text(const InputInfo& in) { return prose<const InputInfo&>(write_permitted, in); }

std::string kind_text(const InputInfo& in) { return prose<const InputInfo&>(write_kind, in); }

std::string words_text(std::span<const char* const> words)
{
    return prose<std::span<const char* const>>(write_words, words);
}

std::string capitals(std::string_view name)
{
    std::string made(name);
    for (char& c : made)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return made;
}

std::string sentence(std::string_view text)
{
    std::string made(text);
    if (made.empty()) return made;
    if (made.front() >= 'a' && made.front() <= 'z') made.front() = static_cast<char>(made.front() - 'a' + 'A');
    if (made.back() != '.') made += '.';
    return made;
}

}  // namespace cutwater::generate
