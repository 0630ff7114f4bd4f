using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stockwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class VesselHeat : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "GaugePressurePascals",
                table: "Pots",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HeaterWatts",
                table: "Pots",
                type: "REAL",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "GaugePressurePascals",
                table: "Pots");

            migrationBuilder.DropColumn(
                name: "HeaterWatts",
                table: "Pots");
        }
    }
}
