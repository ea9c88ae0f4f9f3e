/** Invented jobs for tests of the screens. */
package wherefrom.ui.sample;
