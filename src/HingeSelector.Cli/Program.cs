using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

var bag = new DiagnosticBag();
var book = RuleBookReader.Read(RuleFiles.FromFolder("rules"), bag);
Console.WriteLine(DiagnosticPrinter.Print(bag.Sorted));
Console.WriteLine($"{bag.Sorted.Count} faults; {book?.Rules.Count} rules");
return bag.HasErrors ? 1 : 0;
