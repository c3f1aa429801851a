package outrigger.functions;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

/** A class file (chapter 4): its function values are found and replaced in it, and its nest takes new members. */
final class ClassFile {
  private static final int STATIC_CALL = 0xb8;
  private static final int HEADER = 8;

  private final ByteBuffer file;
  private final ConstantPool pool;
  private final String name;
  private final int attributes;
  private final List<Integer> codes = new ArrayList<>();
  private final List<String> newMembers = new ArrayList<>();
  private boolean changed;

  ClassFile(byte... bytes) {
    file = ByteBuffer.wrap(bytes.clone());
    pool = new ConstantPool(file, HEADER);
    name = pool.text(number(pool.end() + 2));
    int p = pool.end() + 6;
    p += 2 + 2 * number(p);
    p = members(p);
    attributes = members(p);
  }

  private int number(int at) {
    return file.getShort(at) & 0xffff;
  }

  /** Steps over fields or methods and notes where code stands. */
  private int members(int start) {
    int p = start + 2;
    for (int i = number(start); i > 0; i--) {
      int count = number(p + 6);
      p += 8;
      for (int a = 0; a < count; a++) {
        if (pool.text(number(p)).equals("Code")) {
          codes.add(p + 10);
        }
        p += 6 + file.getInt(p + 2);
      }
    }
    return p;
  }

  ConstantPool pool() {
    return pool;
  }

  String name() {
    return name;
  }

  /** Minor and major version in one. */
  int version() {
    return file.getInt(4);
  }

  boolean isChanged() {
    return changed || !newMembers.isEmpty();
  }

  /** The class whose nest this is in, itself if it is no member of another's. */
  String nest() {
    int at = attribute("NestHost");
    return at < 0 ? name : pool.text(number(at + 6));
  }

  void addToNest(String member) {
    newMembers.add(member);
  }

  /** A method that makes calls up at run time, and the constants it is given: indexes into the pool. */
  List<Integer> maker(int number) {
    int p = attribute("BootstrapMethods") + 8;
    for (int i = 0; i < number; i++) {
      p += 4 + 2 * number(p + 2);
    }
    List<Integer> maker = new ArrayList<>(List.of(number(p)));
    for (int i = 0; i < number(p + 2); i++) {
      maker.add(number(p + 4 + 2 * i));
    }
    return maker;
  }

  /** Where an attribute of the class stands, below 0 if it has none. */
  private int attribute(String wanted) {
    int p = attributes + 2;
    for (int i = number(attributes); i > 0; i--) {
      if (pool.text(number(p)).equals(wanted)) {
        return p;
      }
      p += 6 + file.getInt(p + 2);
    }
    return -1;
  }

  /** Tells the place of each call that is made up at run time. */
  void eachMadeUp(IntConsumer place) {
    for (int code : codes) {
      int start = code + 4;
      int end = start + file.getInt(code);
      for (int p = start; p < end; p += Instructions.length(file, p, start)) {
        if (Instructions.code(file, p) == Instructions.INVOKE_DYNAMIC) {
          place.accept(p);
        }
      }
    }
  }

  /** The constant of the call at a place. */
  int constant(int place) {
    return number(place + 1);
  }

  /** Lets the code at a place call a static method instead, which takes and gives the same. */
  void call(int place, String owner, String method, String type) {
    file.put(place, (byte) STATIC_CALL);
    file.putShort(place + 1, (short) pool.method(false, owner, method, type));
    file.putShort(place + 3, (short) 0);
    changed = true;
  }

  byte[] bytes() throws IOException {
    ByteArrayOutputStream rest = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(rest);
    out.write(file.array(), pool.end(), attributes - pool.end());
    writeAttributes(out);
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    DataOutputStream to = new DataOutputStream(whole);
    to.write(file.array(), 0, HEADER);
    pool.writeTo(to);
    rest.writeTo(to);
    return whole.toByteArray();
  }

  private void writeAttributes(DataOutputStream out) throws IOException {
    int members = attribute("NestMembers");
    int count = number(attributes);
    out.writeShort(members < 0 && !newMembers.isEmpty() ? count + 1 : count);
    int p = attributes + 2;
    for (int i = 0; i < count; i++) {
      int length = 6 + file.getInt(p + 2);
      if (p != members) {
        out.write(file.array(), p, length);
      }
      p += length;
    }
    int old = members < 0 ? 0 : number(members + 6);
    if (old + newMembers.size() > 0) {
      out.writeShort(pool.utf8("NestMembers"));
      out.writeInt(2 + 2 * (old + newMembers.size()));
      out.writeShort(old + newMembers.size());
      for (int i = 0; i < old; i++) {
        out.writeShort(number(members + 8 + 2 * i));
      }
      for (String member : newMembers) {
        out.writeShort(pool.type(member));
      }
    }
  }
}
