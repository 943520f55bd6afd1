package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no shop can mean is refused in one sentence that names the argument. */
class CalcRefusalsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "zinc --thickness 3mm --area 1m2 --diameter 12mm | --threaded",
        "zinc --thickness 3mm --area 1m2 --threaded | --diameter",
        "zinc --thickness 3mm --area 1m2 --threaded --diameter 12mm --casting | contradict",
        "zinc --thickness 3mm --area 1m2 --spun --standard astm-a123 | ASTM A153",
        "zinc --thickness 3mm --area 1m2 --casting --standard astm-a123 | iso1461",
        "zinc --thickness 3mm --area 1m2 --category pipe | astm-a123",
        "zinc --thickness 3mm --area 1m2 --standard astm-a123 --category tin | not known",
        "zinc --thickness 3mm --area 1m2 --standard din | not known",
        "zinc --thickness 3mm --area 1m2 --washer | astm-a153",
        "zinc --thickness 3mm --area 1m2 --standard astm-a153 | needs one",
        "zinc --thickness 3mm --area 1m2 --standard astm-a153 --washer --casting | needs one",
        "zinc --thickness 3mm --area 1m2 --plate 1x1m | one way",
        "zinc --thickness 3mm | one way",
        "zinc --thickness 3mm --skin 3mm:1m2 | --skin",
        "zinc --skin 3mm | --skin",
        "zinc --area 1m2 | --thickness",
        "zinc --thickness 3 --area 1m2 | unit",
        "zinc --thickness 3m --area 1m2 | out of range",
        "zinc --thickness 0mm --area 1m2 | out of range",
        "zinc --thickness -3mm --area 1m2 | below zero",
        "zinc --thickness NaN --area 1m2 | --thickness",
        "zinc --thickness 3mm --area 0m2 | out of range",
        "zinc --thickness 3mm --area 1e12m2 | out of range",
        "zinc --thickness 3mm --area 1m2 --open front | --open",
        "zinc --thickness 3mm --area 1m2 --count 0 | --count",
        "zinc --thickness 3mm --area 1m2 --si NaN | silicon",
        "zinc --thickness 3mm --area 1m2 --si 20 | silicon",
        "zinc --thickness 3mm --area 1m2 --yield 60 | 0.6",
        "zinc --thickness 3mm --area 1m2 --yield NaN | above 0",
        "zinc --thickness 3mm --area 1m2 --mass 0kg | out of range",
        "zinc --thickness 3mm --area 1m2 --deep 1m | --kettle",
        "zinc --thickness 3mm --area 1m2 --kettle 4x1x2m --bath 300C | out of range",
        "zinc --thickness 3mm --area 1m2 --acid-iron 60 | --rust",
        "zinc --thickness 3mm --area 1m2 --rust orange | not known",
        "zinc --thickness 3mm --area 1m2 --rust light --acid-iron 900 | out of range",
        "powder --area 1m2 --film 80mm --sg 1.5 --use 0.6 | out of range",
        "powder --area 1m2 --film 80um --sg 15 --use 0.6 | out of range",
        "powder --area 1m2 --film 80um --sg NaN --use 0.6 | out of range",
        "powder --area 1m2 --film 80um --sg 1.5 --use 60 | 0.6",
        "powder --area 1m2 --film 80um --sg 1.5 | --use",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --shape box | --shape",
        "powder --area 1m2 --film 80um --sg 1.5 --shape ball | not known",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --hooks -1 | --hooks",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --reclaim 90 | out of range",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --price 5 | --labour",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --price 5 --labour 30 | --reclaim",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --gun-rate 15kg/h | --booth-air",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --guns 2 | --gun-rate",
        "powder --area 1m2 --film 80um --sg 1.5 --use 60% | plain number",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --hooks two | whole number",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --hook-area 0.004m2 | --hooks",
        "powder --area 1kg --film 80um --sg 1.5 --use 0.6 | --area",
        "powder --area 1m2 --film 80um --sg 1.5 --use 0.6 --pack 0kg | --pack",
        "liquid --area 1m2 --film 80mm --solids 60 | out of range",
        "liquid --area 1m2 --film 80um --solids 0.6 | out of range",
        "liquid --area 1m2 --film 80um --solids 60 --loss 1 | out of range",
        "liquid --area 1m2 --film 80um --solids 60 --loss 0.3 --method brush | contradict",
        "liquid --area 1m2 --film 80um --solids 60 --method spoon | not known",
        "liquid --area 1m2 --film 80um --solids 60 --mix four | --mix",
        "liquid --area 1m2 --film 80um --solids 60 --mix 4:1 --mix-by mass | --densities",
        "liquid --area 1m2 --film 80um --solids 60 --mix 4:1 --mix-by feel | not known",
        "liquid --area 1m2 --film 80um --solids 60 --mix-by mass | --mix",
        "liquid --area 1m2 --film 80um --solids 60 --pot-life 2h | --mix",
        "liquid --area 1m2 --film 80um --solids 60 --mix 4:1 --shop 20C | --pot-life",
        "liquid --area 1m2 --film 80um --solids 60 --rate 9l/h | --pot-life",
        "liquid --area 1m2 --film 80um --solids 60 --exhaust 600m3/h | --rate",
        "liquid --area 1m2 --film 80um --solids 60 --recoat 8h | 8h-7d",
        "liquid --area 1m2 --film 80um --solids 60 --recoat 7d-8h | least",
        "liquid --area 1m2 --film 80um --solids 60 --coats 0 | --coats",
        "liquid --area 1m2 --film 80um --solids 60 --profile 2mm | out of range",
        "cure --steel 6mm --oven 400C --window 10@190 | out of range",
        "cure --steel 6mm --oven 200C --from 220C --window 10@190 | hotter",
        "cure --steel 6m --oven 200C --window 10@190 | out of range",
        "cure --steel 6mm --aluminium 3mm --oven 200C --window 10@190 | either",
        "cure --steel 6mm --window 10@190 | --oven",
        "cure --steel 6mm --oven 200C --window 10 | --window",
        "cure --steel 6mm --oven 200C --window '10@190 12@190' | --window",
        "cure --steel 6mm --oven 200C --window 10@190 --with 'steel 1mm; 0@190' | --with",
        "cure --steel 6mm --oven 200C --window '10@190, max 5' | longest",
        "cure --steel 6mm --oven 200C --window 10@190 --h NaN | out of range",
        "cure --steel 6mm --oven 200C --window 10@190 --emissivity 2 | out of range",
        "cure --steel 6mm --oven 200C --window 10@190 --u 35 --bare | --u",
        "cure --steel 6mm --oven 200C --window 10@190 --bare --emissivity 0.5 | --bare",
        "cure --steel 6mm --oven 200C --window 10@190 --table 2mm:5min --u 35 | --table",
        "cure --steel 6mm --oven 200C --window 10@190 --table 2mm | --table",
        "cure --steel 6mm --oven 200C --window 10@190 --with tin | --with",
        "cure --steel 6mm --oven 200C --window 10@190 --settings 160C-220C | --with",
        "cure --steel 6mm --oven 200C --window 10@190 --with 'steel 1mm' --settings 220C-160C |"
            + " first",
        "cure --aluminium 3mm --oven 200C --window 10@190 --degas | galvanized",
        "cure --steel 6mm --oven 200C --window 10@190 --proven 30min | --degas",
        "cure --steel 6mm --oven 200C --window 10@190 --carriers 30kg | --work",
        "cure --window 10@190 --curve '0:20 5:150' --steel 3mm | --steel",
        "cure --window 10@190 --curve nowhere.csv | --curve",
        "cure --window 10@190 --curve '0:20 0:150' | rise",
        "cure --window 10@190 --curve '0:20 x:150' | reading 2",
        "area --plate 1000x500mm --thickness 80m | out of range",
        "area --plate 1000x500mm --thickness 3mm --count 0 | --count",
      })
  void isRefusedInOneSentence(String line, String names) {
    assertThat(Calc.refusal(line)).contains(names);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "zinc --thickness 3mm --area 1m2 --spun --threaded --diameter 12mm",
        "zinc --thickness 3mm --area 1m2 --spun --casting",
        "zinc --thickness 3mm --area 1m2 --standard astm-a153 --piece-length 300mm --spun",
        "powder --area 1m2 --film 80um --sg 1.5 --use 1",
        "liquid --area 1m2 --film 80um --solids 100 --loss 0",
        "cure --steel 6mm --oven 260C --window 10@190",
        "cure --steel 6mm --oven 200C --window 10@190 --h 0",
      })
  void theLimitsThemselvesAreGood(String line) {
    assertThat(Calc.ask(line).code()).isEqualTo(ExitCode.DONE);
  }
}
