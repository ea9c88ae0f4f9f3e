package wherefrom.job;

import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Function;

/**
 * Everything outside that the window and the command line work with; put together in one place when
 * the program starts.
 *
 * @param shelves opens the shelf in a folder
 */
public record Equipment(
    Function<Path, Shelf> shelves,
    LayoutFiles layouts,
    Archives archives,
    Photos photos,
    SettingsStore settings,
    TagReader reader,
    Pictures pictures,
    Cameras cameras,
    SheetPrinter printer,
    Reports reports,
    JobChecks checks,
    Backups backups,
    Drives drives,
    Program program,
    Clock clock) {}
