package spangle.report.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import spangle.report.week.Printable;

/** Sets a template of this package. */
public final class Page {
  private Page() {}

  /** The page of that template, as HTML of which nothing but text is shown. */
  public static String of(String template, Map<String, Object> model) {
    Configuration setting = new Configuration(Configuration.VERSION_2_3_34);
    setting.setClassForTemplateLoading(Page.class, "");
    setting.setDefaultEncoding(StandardCharsets.UTF_8.name());
    setting.setOutputFormat(HTMLOutputFormat.INSTANCE);
    setting.setLocale(Locale.ROOT);
    setting.setNumberFormat("computer");
    setting.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    setting.setLogTemplateExceptions(false);
    setting.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    StringWriter out = new StringWriter();
    try {
      setting.getTemplate(template).process(model, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("a sheet's template does not match its data", e);
    }
    return Printable.text(out.toString());
  }
}
