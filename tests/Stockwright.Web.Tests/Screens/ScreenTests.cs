using Xunit;

namespace Stockwright.Web.Tests.Screens;

/// <summary>A reader that misreads would make every test that asks it pass for nothing.</summary>
public sealed class ScreenTests
{
    private const string Html = """
        <!DOCTYPE html><html><body><main><!-- <p class="problem">not said</p> -->
        <section class="problems"><h2>One thing to put right</h2><a href="/plan?a=1&amp;b=2#f-room">Too hot</a></section>
        <p class="now-what due">Skim&#xA0;it <b>now</b>, cook</p>
        <input name="room" id="f-room" value="5 &gt; 4" required /><br><span class="problem" id="f-room-problem"><span>Too hot</span></span>
        <select name="pot"><option value="a">A</option><option value="b" selected>B</option></select>
        <input type="radio" name="lid" value="on"><input type="radio" name="lid" value="off" checked>
        <textarea name="note">a &lt; b</textarea><p class="notice">one</p><p class="notice warning">two</p><script>if (1 < 2) { "never seen"; }</script>
        </main></body></html>
        """;

    private readonly Screen screen = Screen.Of(Html);

    [Fact]
    public void It_says_what_is_wrong_and_where()
    {
        Assert.Equal("Too hot", screen.ProblemOf("room"));
        Assert.Null(screen.ProblemOf("pot"));
        Assert.True(screen.LeadsTo("room"));
        Assert.False(screen.LeadsTo("pot"));
        Assert.Equal("One thing to put right Too hot", screen.PutRight);
        Assert.Equal(["Too hot"], screen.Problems);
    }

    [Fact]
    public void It_says_what_fields_hold() =>
        Assert.Equal(("5 > 4", "b", "off", "a < b"), (screen.ValueOf("room"), screen.ValueOf("pot"), screen.ValueOf("lid"), screen.ValueOf("note")));

    [Fact]
    public void It_reads_as_a_cook_does()
    {
        Assert.Equal("Skim it now, cook", screen.Now);
        Assert.Equal(["two"], screen.Warnings);
        Assert.Equal(["/plan?a=1&b=2#f-room"], screen.Links);
        Assert.DoesNotContain("never seen", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("not said", screen.Text, StringComparison.Ordinal);
        Assert.True(screen.IsBefore(screen.The("problems"), screen.The("now-what")));
        Assert.False(screen.IsBefore(screen.The("now-what"), screen.The("problems")));
    }

    [Fact]
    public void What_is_not_there_fails()
    {
        Assert.ThrowsAny<Exception>(() => screen.ValueOf("hob"));
        Assert.ThrowsAny<Exception>(() => screen.The("answer"));
        Assert.ThrowsAny<Exception>(() => Screen.Of("<p>an error</p>"));
    }
}
