// Makes random edits of the first reading of a project until it is killed, and tells each that the project has taken,
// as the JSON of its record on a line. What it told must be in the file.

#include "libcore/edit/edit_json.h"
#include "tests/edit/random_edits.h"
#include "tests/record/made_up_project.h"

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
    using namespace pithward;
    if (argc != 3) {
        std::fprintf(stderr, "record_editor PROJECT SEED\n");
        return 2;
    }
    record::Project project = test::opened(argv[1]);
    std::mt19937 random(static_cast<unsigned>(std::atoi(argv[2])));
    const ReadingId id{1};
    Document document = *project.document(id); // kept in step with the project's
    std::printf("ready\n");
    std::fflush(stdout);
    for (;;) {
        const EditStamp stamp = test::stamp_by("Ida");
        const bool undo = random() % 5 == 0;
        const Edit edit = test::random_edit(document, random);
        const auto made = undo ? project.undo(id, stamp) : project.edit(id, edit, stamp);
        if (made && *made) {
            (void)(undo ? document.undo(stamp) : document.make(edit, stamp));
            std::printf("%s\n", record_to_json(**made)->c_str());
            std::fflush(stdout);
        }
    }
}
