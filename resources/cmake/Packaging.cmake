# What `cmake --install` puts where, and the Debian package that `cpack -G DEB` makes of it.
include(GNUInstallDirs)
install(TARGETS pithward RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES resources/desktop/pithward.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES resources/desktop/pithward-mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME pithward.xml)
install(FILES resources/desktop/pithward.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES resources/desktop/pithward.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/mimetypes
  RENAME application-x-pithward.svg)
install(FILES ${CMAKE_BINARY_DIR}/app/pithward.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES ${CMAKE_BINARY_DIR}/app/pithward.bash DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions
  RENAME pithward)
install(FILES README.md CHANGELOG.md CITATION.cff DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES LICENSE DESTINATION ${CMAKE_INSTALL_DOCDIR} RENAME copyright)
install(DIRECTORY docs/ DESTINATION ${CMAKE_INSTALL_DOCDIR} FILES_MATCHING PATTERN "*.md")
install(DIRECTORY demo-scans/ DESTINATION ${CMAKE_INSTALL_DATADIR}/pithward/demo-scans
  FILES_MATCHING PATTERN "*.jpg" PATTERN "*.json" PATTERN "*.csv" PATTERN "README.md" PATTERN "maker" EXCLUDE)

set(CPACK_PACKAGE_NAME pithward)
set(CPACK_PACKAGE_VENDOR "Pithward maintainers")
set(CPACK_PACKAGE_CONTACT "Pithward maintainers <maintainers@pithward.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "ring-width series from scanned increment cores")
set(CPACK_PACKAGE_DESCRIPTION "Finds the ring boundaries on scans of sanded increment cores, measures the rings with their uncertainty,
points out the places that are doubtful, dates the series against each other and writes them in the files that
dating programs and the international archive read. With a window, a project file that keeps who did what, and
commands without a window.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# What is loaded when the program runs, which no link tells of: the project file, icons, Qt's own words.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6sql6-sqlite, libqt6svg6, qt6-translations-l10n")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "shared-mime-info, desktop-file-utils, bash-completion")
include(CPack)
