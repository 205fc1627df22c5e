#include "demo-scans/maker/folder.h"
#include "tests/demo_scans/scenes.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>
#include <vips/vips.h>

#include <filesystem>
#include <fstream>

namespace pithward::demo {
namespace {

TEST(WriteImage, EveryFormatBearsTheResolution) {
    const test::TemporaryFolder own; // tests run side by side
    const std::filesystem::path folder = own.file("");
    const Picture picture = rendered(noise_free(short_core())).picture;
    for (const Format format : {Format::Png, Format::Jpeg, Format::TiffLzw, Format::TiffDeflate}) {
        const std::filesystem::path file = folder / ("scan" + suffix(format));
        ASSERT_TRUE(write_image(file, picture, format).has_value());
        VipsImage* image = vips_image_new_from_file(file.c_str(), nullptr);
        ASSERT_NE(image, nullptr);
        EXPECT_EQ(vips_image_get_width(image), picture.width);
        EXPECT_EQ(vips_image_get_height(image), picture.height);
        EXPECT_NEAR(vips_image_get_xres(image) * 25.4, 1200.0, 0.5) << file;
        EXPECT_NEAR(vips_image_get_yres(image) * 25.4, 1200.0, 0.5) << file;
        g_object_unref(image);
    }
}

TEST(WriteImage, AFolderThatIsNotThereIsNamed) {
    const Picture picture = rendered(noise_free(short_core())).picture;
    const Outcome<void> written = write_image("/nowhere/at/all/scan.png", picture, Format::Png);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().where, "/nowhere/at/all/scan.png");
}

TEST(RenderFolder, ATrayIsOneFileAndOneCaseForEachCore) {
    const test::TemporaryFolder own; // tests run side by side
    const std::filesystem::path folder = own.file("");
    Scene a = noise_free(short_core());
    Scene b = a;
    a.name = "A";
    b.name = "B";
    ASSERT_TRUE(render_folder(folder, {{"tray", "tray", {a, b}, Format::Png}}).has_value());
    std::ifstream in(folder / "cases.json");
    const nlohmann::json cases = nlohmann::json::parse(in)["cases"];
    ASSERT_EQ(cases.size(), 2U);
    EXPECT_EQ(cases[0]["file"], "tray.png");
    EXPECT_EQ(cases[1]["file"], "tray.png");
    EXPECT_EQ(cases[1]["truth"], "B.truth.json");
    std::ifstream truth_in(folder / "B.truth.json");
    const nlohmann::json truth = nlohmann::json::parse(truth_in);
    EXPECT_EQ(truth["boundaries"].size(), truth["widths"].size() + 1);
    EXPECT_EQ(truth["path"], cases[1]["path"]);
}

} // namespace
} // namespace pithward::demo
