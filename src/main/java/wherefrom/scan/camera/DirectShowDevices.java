package wherefrom.scan.camera;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.ffmpeg.avdevice.AVDeviceInfo;
import org.bytedeco.ffmpeg.avdevice.AVDeviceInfoList;
import org.bytedeco.ffmpeg.avformat.AVInputFormat;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.global.avdevice;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.PointerPointer;
import wherefrom.job.image.Camera;

/** DirectShow devices of Windows, from FFmpeg's own device list. */
record DirectShowDevices(String format) implements DeviceList {

  DirectShowDevices() {
    this("dshow");
  }

  @Override
  public List<Camera> list() {
    AVInputFormat input = avformat.av_find_input_format(format);
    if (input == null) {
      return List.of();
    }
    List<Camera> cameras = new ArrayList<>();
    try (PointerPointer<AVDeviceInfoList> found = new PointerPointer<>(1)) {
      found.put(0, new AVDeviceInfoList(null));
      AVDictionary noOptions = new AVDictionary(null);
      int count = avdevice.avdevice_list_input_sources(input, null, noOptions, found);
      AVDeviceInfoList devices = found.get(AVDeviceInfoList.class);
      for (int index = 0; index < count; index++) {
        AVDeviceInfo device = devices.devices(index);
        if (sendsPictures(device)) {
          String title = device.device_description().getString();
          cameras.add(new Camera(format + ":" + device.device_name().getString(), title));
        }
      }
      avdevice.avdevice_free_list_devices(found);
    }
    return cameras;
  }

  private static boolean sendsPictures(AVDeviceInfo device) {
    for (int type = 0; type < device.nb_media_types(); type++) {
      if (device.media_types().get(type) == avutil.AVMEDIA_TYPE_VIDEO) {
        return true;
      }
    }
    return false;
  }
}
