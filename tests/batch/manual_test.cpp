// What is installed beside the program tells of the program as it is.
#include "app/manual/manual_page.h"
#include "libcore/record/project_header.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iomanip>
#include <iterator>
#include <sstream>

namespace pithward::manual {
namespace {

TEST(Manual, TellsEveryCommandWithItsOptions) {
    const batch::CommandLine line;
    const std::string page = manual_page(line, "1.2.3");
    const std::string completion = bash_completion(line);
    for (const batch::Command& command : batch::commands()) {
        const std::size_t chapter = page.find(std::string(".SS ") + command.name + "\n");
        ASSERT_NE(chapter, std::string::npos) << command.name;
        EXPECT_NE(completion.find(std::string(command.name) + ") words="), std::string::npos) << command.name;
    }
    EXPECT_NE(page.find("pithward 1.2.3"), std::string::npos);
    EXPECT_NE(page.find("\\fB\\-\\-from {bark,pith}\\fR"), std::string::npos) << "values that are known";
    EXPECT_NE(page.find("\\fB\\-\\-threads INT\\fR"), std::string::npos);
    EXPECT_NE(completion.find("--overlay"), std::string::npos);
}

TEST(Manual, TheSystemKnowsAProjectByTheNumberThatTheProgramWrites) {
    std::ifstream file(PITHWARD_MIME);
    const std::string xml{std::istreambuf_iterator<char>(file), {}};
    std::ostringstream number;
    number << "offset=\"68\" value=\"0x" << std::hex << std::setw(8) << std::setfill('0')
           << record::project_application_id << '"';
    EXPECT_NE(xml.find(number.str()), std::string::npos) << number.str();
}

} // namespace
} // namespace pithward::manual
