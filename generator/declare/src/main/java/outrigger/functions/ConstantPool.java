package outrigger.functions;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** The constants of a class file (chapter 4.4): read as they stand, more added behind them. */
final class ConstantPool {
  static final int UTF8 = 1;
  static final int CLASS = 7;
  static final int METHOD = 10;
  static final int INTERFACE_METHOD = 11;
  static final int NAME_AND_TYPE = 12;
  static final int HANDLE = 15;
  static final int METHOD_TYPE = 16;
  static final int INVOKE_DYNAMIC = 18;
  private static final int FIELD = 9;
  private static final int LONG = 5;
  private static final int DOUBLE = 6;
  private static final int STRING = 8;
  private static final int PACKAGE = 20;
  private static final int MODULE = 19;
  private static final int MOST = 65_535;

  private final ByteBuffer file;
  private final int[] at;
  private final int end;
  private final ByteArrayOutputStream added = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(added);
  private final Map<String, Integer> known = new HashMap<>();
  private int count;

  /** An empty one. */
  ConstantPool() {
    file = ByteBuffer.allocate(0);
    at = new int[1];
    end = 0;
    count = 1;
  }

  /** Of a class file; {@link #end} is where it ends. */
  ConstantPool(ByteBuffer file, int start) {
    this.file = file;
    count = file.getShort(start) & 0xffff;
    at = new int[count];
    int p = start + 2;
    for (int i = 1; i < count; i++) {
      at[i] = p;
      int tag = file.get(p);
      p += 1 + size(tag, p);
      i += tag == LONG || tag == DOUBLE ? 1 : 0;
    }
    end = p;
  }

  private int size(int tag, int p) {
    return switch (tag) {
      case UTF8 -> 2 + (file.getShort(p + 1) & 0xffff);
      case LONG, DOUBLE -> 8;
      case CLASS, STRING, METHOD_TYPE, MODULE, PACKAGE -> 2;
      case HANDLE -> 3;
      default -> 4;
    };
  }

  int end() {
    return end;
  }

  int tag(int index) {
    return file.get(at[index]);
  }

  /** The first two bytes of a constant after its tag, or those from {@code offset} on. */
  int number(int index, int offset) {
    return file.getShort(at[index] + 1 + offset) & 0xffff;
  }

  /** The kind of a method handle. */
  int kind(int index) {
    return file.get(at[index] + 1);
  }

  /** A text, or that of a class or method type. */
  String text(int index) {
    if (tag(index) != UTF8) {
      return text(number(index, 0));
    }
    byte[] bytes = new byte[number(index, 0)];
    file.get(at[index] + 3, bytes);
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** The class that a field or method belongs to. */
  String owner(int index) {
    return text(number(index, 0));
  }

  String name(int index) {
    return text(number(number(index, 2), 0));
  }

  String descriptor(int index) {
    return text(number(number(index, 2), 2));
  }

  int utf8(String text) {
    return add(UTF8 + text, () -> {
      out.writeByte(UTF8);
      out.writeUTF(text);
    });
  }

  int type(String name) {
    int text = utf8(name);
    return add(CLASS + ":" + text, () -> {
      out.writeByte(CLASS);
      out.writeShort(text);
    });
  }

  /** A method, of an interface or not. */
  int method(boolean ofInterface, String owner, String name, String descriptor) {
    return member(ofInterface ? INTERFACE_METHOD : METHOD, owner, name, descriptor);
  }

  int field(String owner, String name, String descriptor) {
    return member(FIELD, owner, name, descriptor);
  }

  private int member(int tag, String owner, String name, String descriptor) {
    int type = type(owner);
    int text = utf8(name);
    int form = utf8(descriptor);
    int both = add(NAME_AND_TYPE + ":" + text + ":" + form, () -> pair(NAME_AND_TYPE, text, form));
    return add(tag + ":" + type + ":" + both, () -> pair(tag, type, both));
  }

  private void pair(int tag, int a, int b) throws IOException {
    out.writeByte(tag);
    out.writeShort(a);
    out.writeShort(b);
  }

  private interface Writing {
    void run() throws IOException;
  }

  private int add(String key, Writing writing) {
    Integer there = known.get(key);
    if (there != null) {
      return there;
    }
    if (count >= MOST) {
      throw new IllegalStateException("too many constants in one class");
    }
    try {
      writing.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    known.put(key, count);
    return count++;
  }

  /** The count and all constants. */
  void writeTo(DataOutputStream to) throws IOException {
    to.writeShort(count);
    if (end > 0) {
      to.write(file.array(), at[1], end - at[1]);
    }
    added.writeTo(to);
  }
}
