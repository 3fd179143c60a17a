using HingeSelector.Diagnostics;
using HingeSelector.Rules;
using HingeSelector.Rules.Reading;

var bag = new DiagnosticBag();
var book = RuleBookReader.Read(RuleFiles.FromFolder("rules"), bag);
if (book is not null && !bag.HasErrors)
    new HingeSelector.Examples.ExampleRunner(book).RunAll(bag);
Console.WriteLine(DiagnosticPrinter.Print(bag.Sorted));
Console.WriteLine($"{bag.Sorted.Count} faults; {book?.Rules.Count} rules");
return bag.HasErrors ? 1 : 0;
