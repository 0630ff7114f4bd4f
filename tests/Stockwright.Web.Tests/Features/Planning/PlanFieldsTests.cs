using System.Reflection;
using Microsoft.AspNetCore.Mvc.Testing;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>A field is told once: what its row writes it reads back, and it is on the page by itself.</summary>
public sealed class PlanFieldsTests(StockwrightFactory factory) : IClassFixture<StockwrightFactory>
{
    private static readonly PlanRequest Usual = PlanQuery.Usual(
        TestBook.London.Recipes.Recipes[0], TestBook.London.Larder, TestBook.London.Kitchen, TestBook.London.Kitchen.Pots[0], TestBook.London.Kitchen.Hobs[0]);

    public static TheoryData<string, UnitSystem> Fields
    {
        get
        {
            TheoryData<string, UnitSystem> fields = [];
            foreach (FieldRow row in PlanFields.All.Where(row => row.Kind != FieldKind.Name))
            {
                fields.Add(row.Name, UnitSystem.Metric);
                fields.Add(row.Name, UnitSystem.UsCustomary);
            }

            return fields;
        }
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_row_reads_back_what_it_writes(string name, UnitSystem units)
    {
        FieldRow row = PlanFields.All.First(field => string.Equals(field.Name, name, StringComparison.Ordinal));
        foreach (string text in (IReadOnlyList<string>)Generic(nameof(Samples), row).Invoke(null, [row, units])!)
        {
            Generic(nameof(HoldRow), row).Invoke(null, [row, text, units]);
        }
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_field_of_a_record_comes_back_from_it(string name, UnitSystem units)
    {
        FieldRow row = PlanFields.All.First(field => string.Equals(field.Name, name, StringComparison.Ordinal));
        foreach (string text in (IReadOnlyList<string>)Generic(nameof(Samples), row).Invoke(null, [row, units])!)
        {
            if (PlanFields.OfRequest.FirstOrDefault(field => field.Row == row) is { } asked)
            {
                Hold(asked, name is "slow-setting" ? Usual with { Pot = Usual.Pot with { Kind = Stockwright.Kitchen.PotKind.SlowCooker } } : Usual, text, units);
            }

            if (QuestionFields.OfQuestions.FirstOrDefault(field => field.Row == row) is { } question)
            {
                Hold(question, PlanQuestions.None, text, units);
            }
        }
    }

    [Fact]
    public async Task Every_field_is_on_the_page()
    {
        using HttpClient client = factory.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        string page = await client.GetStringAsync("/plan?recipe=brown-veal&date=2027-03-05", TestContext.Current.CancellationToken);
        Assert.All(PlanFields.All, row => Assert.Contains($" name=\"{row.Name}\"", page, StringComparison.Ordinal));
    }

    [Fact]
    public void No_two_fields_have_one_name() => Assert.Equal(PlanFields.All.Count, PlanFields.All.Select(row => row.Name).Distinct(StringComparer.Ordinal).Count());

    private static void Hold<TRecord>(FieldBinding<TRecord> field, TRecord usual, string text, UnitSystem units)
    {
        FieldReader reader = new(TypedForm.Empty.With(field.Row.Name, text), units);
        TRecord changed = field.Read(reader)!(usual);
        Assert.Empty(reader.Problems);
        Assert.Equal(text, field.Text(changed, units));

        List<KeyValuePair<string, string>> written = [];
        field.Write(written, changed, usual, units);
        Assert.True(written.Count == 0 ? field.IsSame(changed, usual) : written is [{ } only] && string.Equals(only.Value, text, StringComparison.Ordinal));
    }

    private static void HoldRow<T>(FieldRow<T> row, string text, UnitSystem units)
        where T : struct
    {
        FieldReader reader = new(TypedForm.Empty.With(row.Name, text), units);
        T? read = row.Read(reader);
        Assert.Empty(reader.Problems);
        Assert.NotNull(read);
        Assert.Equal(text, row.Text(read.Value, units));
        if (row is NumberRow<T> number)
        {
            // To the last digit: an end of the range is the record's own.
            Assert.Contains(read.Value, new[] { number.Range.Least, number.Range.Most });
        }
    }

    private static IReadOnlyList<string> Samples<T>(FieldRow<T> row, UnitSystem units)
        where T : struct => row switch
        {
            NumberRow<T> number => [row.Text(number.Range.Least, units), row.Text(number.Range.Most, units)],
            WordsRow<T> words => [.. words.Words.Select(word => word.Word)],
            WholeRow whole => [whole.Text(whole.Range.Least, units), whole.Text(whole.Range.Most, units)],
            TickRow => ["1"],
            TimeRow => ["00:00", "23:59:59"],
            DateRow => ["2000-01-01", "2200-12-31"],
            _ => throw new ArgumentException(row.Name, nameof(row)),
        };

    private static MethodInfo Generic(string method, FieldRow row)
    {
        Type? type = row.GetType();
        while (type is not { IsGenericType: true } || type.GetGenericTypeDefinition() != typeof(FieldRow<>))
        {
            type = type!.BaseType;
        }

        return typeof(PlanFieldsTests).GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(type.GetGenericArguments());
    }
}
