#include "app/manual/manual_page.h"

namespace pithward::manual {

namespace {

/// A text as man(7) wants it: no backslash, hyphen or leading dot that means something.
std::string plain(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '\\') {
            out += "\\e";
        } else if (c == '-') {
            out += "\\-";
        } else if ((c == '.' || c == '\'') && (out.empty() || out.back() == '\n')) {
            out += "\\&";
            out += c;
        } else {
            out += c;
        }
    }
    return out;
}

bool is_told(const CLI::Option& option) {
    return !option.get_group().empty();
}

/// "{bark,pith}" where the values are known, else "INT", whatever its bounds.
std::string value_of(const CLI::Option& option) {
    const std::string type = option.get_type_name();
    const std::size_t colon = type.find(':');
    return colon != std::string::npos && type[colon + 1] == '{' ? type.substr(colon + 1) : type.substr(0, colon);
}

/// "--dpi FLOAT", or the name of an argument.
std::string name_of(const CLI::Option& option) {
    if (option.get_positional()) {
        return option.get_name(true);
    }
    const bool takes_value = option.get_items_expected_max() > 0;
    return option.get_name() + (takes_value ? " " + value_of(option) : "");
}

/// The options of a command, but for those that `general` has told of.
void add_options(std::string& page, const CLI::App& command, const CLI::App* general = nullptr) {
    for (const CLI::Option* option : command.get_options()) {
        const bool known = general != nullptr && !option->get_positional() &&
                           general->get_option_no_throw(option->get_name()) != nullptr;
        if (is_told(*option) && !known) {
            page += ".TP\n\\fB" + plain(name_of(*option)) + "\\fR\n" + plain(option->get_description()) + "\n";
        }
    }
}

bool in_help(const CLI::App& command) {
    return !command.get_group().empty();
}

} // namespace

std::string manual_page(const batch::CommandLine& line, const std::string& version) {
    std::string page = ".TH PITHWARD 1 \"\" \"pithward " + plain(version) + "\" \"User Commands\"\n";
    page += ".SH NAME\npithward \\- ring\\-width series from scanned increment cores\n";
    page += ".SH SYNOPSIS\n.B pithward\n[\\fIFILE\\fR...]\n.br\n.B pithward\n\\fICOMMAND\\fR [\\fIOPTION\\fR...]\n";
    page += ".SH DESCRIPTION\nPithward takes scans of sanded increment cores, finds the ring boundaries, measures the "
            "rings with their uncertainty and points out the places that are doubtful. Without a command it opens its "
            "window, with the files given.\n";
    page += ".SH OPTIONS\n";
    add_options(page, line.parser);
    page += ".SH COMMANDS\nEach of them knows \\-\\-strict, \\-\\-force, \\-\\-quiet, \\-\\-threads and \\-\\-help.\n";
    for (const CLI::App* command : line.parser.get_subcommands({})) {
        if (in_help(*command)) {
            page += ".SS " + plain(command->get_name()) + "\n" + plain(command->get_description()) + ".\n";
            add_options(page, *command, &line.parser);
        }
    }
    page +=
        ".SH EXIT STATUS\n.TP\n0\ndone\n.TP\n1\ndone, with findings that need a person (with \\-\\-strict)\n.TP\n2\n"
        "arguments or input that can't be used: one line on standard error tells the file, what is wrong and what "
        "to do\n";
    page += ".SH FILES\n/usr/share/doc/pithward has the documents, /usr/share/pithward/demo\\-scans an invented site "
            "to try it on.\n";
    return page;
}

std::string bash_completion(const batch::CommandLine& line) {
    const auto options_of = [](const CLI::App& command) {
        std::string words;
        for (const CLI::Option* option : command.get_options()) {
            if (is_told(*option)) {
                for (const std::string& name : option->get_lnames()) {
                    words += (words.empty() ? "--" : " --") + name;
                }
            }
        }
        return words;
    };
    std::string commands;
    std::string cases;
    for (const CLI::App* command : line.parser.get_subcommands({})) {
        if (in_help(*command)) {
            commands += (commands.empty() ? "" : " ") + command->get_name();
            cases += "        " + command->get_name() + ") words=\"" + options_of(*command) + "\" ;;\n";
        }
    }
    return "# Completion of pithward's commands and options for bash. Made by the build.\n"
           "_pithward() {\n"
           "    local word=${COMP_WORDS[COMP_CWORD]} words\n"
           "    COMPREPLY=()\n"
           "    case ${COMP_WORDS[1]} in\n" +
           cases + "        *) words=\"" + options_of(line.parser) +
           "\" ;;\n"
           "    esac\n"
           "    if [[ $word == -* ]]; then\n"
           "        COMPREPLY=($(compgen -W \"$words\" -- \"$word\"))\n"
           "    elif [[ $COMP_CWORD -eq 1 ]]; then\n"
           "        COMPREPLY=($(compgen -W \"" +
           commands +
           "\" -- \"$word\"))\n"
           "    fi\n"
           "}\n"
           "complete -o default -F _pithward pithward\n";
}

} // namespace pithward::manual
