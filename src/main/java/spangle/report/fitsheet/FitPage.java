package spangle.report.fitsheet;

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

/** The answer as one A4 page that needs nothing else. */
public final class FitPage {
  private FitPage() {}

  /** The page, as HTML that is also well-formed XML. */
  public static String of(FitSheet sheet) {
    Configuration setting = new Configuration(Configuration.VERSION_2_3_34);
    setting.setClassForTemplateLoading(FitPage.class, "");
    setting.setDefaultEncoding(StandardCharsets.UTF_8.name());
    setting.setOutputFormat(HTMLOutputFormat.INSTANCE);
    setting.setLocale(Locale.ROOT);
    setting.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    setting.setLogTemplateExceptions(false);
    setting.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    StringWriter out = new StringWriter();
    try {
      setting.getTemplate("fit.ftlh").process(Map.of("s", sheet), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("the sheet's template does not match its data", e);
    }
    return Printable.text(out.toString());
  }
}
