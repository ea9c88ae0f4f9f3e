package wherefrom.job;

/**
 * One frame from a camera, for reading and for the preview.
 *
 * @param grey the frame in grey values
 * @param bgra the same frame, four bytes a pixel: blue, green, red, 255
 */
public record CameraFrame(GreyImage grey, byte[] bgra) {}
