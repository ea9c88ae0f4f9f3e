/**
 * The engine drawn from its layout, as shapes: plain Java, for glass and paper alike. The layout
 * and the bore pitch say everything; there is no picture of a certain engine. Measures are in
 * pitches unless they say otherwise. {@link wherefrom.drawing.EngineGeometry} says where things
 * lie, {@link wherefrom.drawing.EngineAbove}, {@link wherefrom.drawing.EngineBelow}, {@link
 * wherefrom.drawing.CylinderZoom}, {@link wherefrom.drawing.MainsPage} and {@link
 * wherefrom.drawing.OneBearing} draw, {@link wherefrom.drawing.MarkPlan} puts the marks of states.
 *
 * <p>Where a layout leaves the usual, these rules hold.
 *
 * <ul>
 *   <li>The first bank is the left one, whatever its name. A shorter bank begins at the front.
 *   <li>Mains stand in the bays between the bores, see {@link wherefrom.drawing.MainRow}.
 *   <li>Numbers that find no room stand in rows outside the engine, those of the mains then below
 *       them. A name that finds none is left out. Nothing is written smaller than the least letter.
 *   <li>The fork of a rod's end view shows the state of the rod where rods are tracked; else it is
 *       metal of the engine. Pistons are drawn from below, in the place of the end view, where they
 *       are asked about.
 *   <li>A split case shows its left half above, the right one below, half a shell in each; the
 *       thrust main has its flanges on the crank.
 *   <li>From below what is meant has a ring round its end view; which half it is, its fill says.
 *       From above rockers and springs have an arrow, as a ring would cover the number.
 *   <li>A suspect part's mark is a triangle on its point, a failed one's a square with a cross, one
 *       without decision a low box with a dash, a place left empty an open tray. The bar and the
 *       dot of a triangle are drawn, so that they may be smaller than a letter.
 *   <li>Where any zone would be too small for a finger, the whole drawing, or the whole column, is
 *       one zone.
 * </ul>
 */
@NullMarked
package wherefrom.drawing;

import org.jspecify.annotations.NullMarked;
