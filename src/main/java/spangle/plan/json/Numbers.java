package spangle.plan.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;

/** "No limit" is null in the file: an infinite mass, the largest of whole numbers. */
final class Numbers extends SimpleModule {
  private static final long serialVersionUID = 1L;

  Numbers() {
    super("numbers");
    addSerializer(double.class, new WriteDouble());
    addSerializer(Double.class, new WriteDouble());
    addSerializer(int.class, new WriteInt());
    addSerializer(Integer.class, new WriteInt());
    addDeserializer(double.class, new ReadDouble());
    addDeserializer(Double.class, new ReadDouble());
    addDeserializer(int.class, new ReadInt());
    addDeserializer(Integer.class, new ReadInt());
  }

  private static final class WriteDouble extends StdSerializer<Double> {
    private static final long serialVersionUID = 1L;

    WriteDouble() {
      super(Double.class);
    }

    @Override
    public void serialize(Double value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      if (value.isNaN() || value == Double.NEGATIVE_INFINITY) {
        throw new IllegalArgumentException(value + " cannot stand in a plan");
      }
      if (value.isInfinite()) {
        json.writeNull();
      } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
        json.writeNumber(value.longValue());
      } else {
        json.writeNumber(value);
      }
    }
  }

  private static final class WriteInt extends StdSerializer<Integer> {
    private static final long serialVersionUID = 1L;

    WriteInt() {
      super(Integer.class);
    }

    @Override
    public void serialize(Integer value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      if (value == Integer.MAX_VALUE) {
        json.writeNull();
      } else {
        json.writeNumber(value);
      }
    }
  }

  private static final class ReadDouble extends StdDeserializer<Double> {
    private static final long serialVersionUID = 1L;

    ReadDouble() {
      super(Double.class);
    }

    @Override
    public Double deserialize(JsonParser json, DeserializationContext context) throws IOException {
      if (!json.currentToken().isNumeric()) {
        context.reportInputMismatch(Double.class, "a number belongs here");
      }
      double value = json.getDoubleValue();
      if (Double.isInfinite(value)) {
        context.reportInputMismatch(Double.class, "%s is too large", json.getText());
      }
      return value;
    }

    @Override
    public Double getNullValue(DeserializationContext context) {
      return Double.POSITIVE_INFINITY;
    }
  }

  private static final class ReadInt extends StdDeserializer<Integer> {
    private static final long serialVersionUID = 1L;

    ReadInt() {
      super(Integer.class);
    }

    @Override
    public Integer deserialize(JsonParser json, DeserializationContext context) throws IOException {
      if (json.currentToken() != JsonToken.VALUE_NUMBER_INT) {
        context.reportInputMismatch(Integer.class, "a whole number belongs here");
      }
      return json.getIntValue();
    }

    @Override
    public Integer getNullValue(DeserializationContext context) {
      return Integer.MAX_VALUE;
    }
  }
}
